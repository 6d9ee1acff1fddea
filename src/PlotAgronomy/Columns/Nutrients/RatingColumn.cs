using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>Where the readings of many soils stand on one scale of a rating system: a row of a column is a soil.</summary>
/// <remarks>
/// <para>A row's class is that of <see cref="RatingSystem.Rate"/>. What the scale goes by besides the reading (crop, region,
/// exchange capacity, texture, moisture of the sample, for manganese in New Jersey the water pH) is the same for all rows. A
/// value that cannot be refuses its row, not the whole call.</para>
/// <para>A column is made once, does not change, and may be used by several threads at once.</para>
/// </remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class RatingColumn
{
    private readonly ClassLimits limits;
    private readonly ReadingSteps steps;

    /// <summary>Water pH where the scale is for an index of manganese and pH; else NaN.</summary>
    private readonly double indexPh = double.NaN;

    private RatingColumn(RatingSystem system, SoilReading reading, PlotSoil soil, CropRow? crop)
    {
        System = system;
        Analyte = reading.Analyte;
        var report = soil.Report with { Readings = [reading] };
        (Scale, Unrated) = system.ScaleFor(Analyte, soil.ReportedBy(report), crop);
        if (Scale is not null)
        {
            limits = Scale.Limits;
            steps = ReadingSteps.Between(reading, Scale.Unit ?? SoilTestUnit.PartsPerMillion, report)!.Value;
            indexPh = Scale.Unit is null ? report.WaterPh!.Value : double.NaN;
        }
        else if (Unrated is null)
        {
            throw new ArgumentException($"{system} has no limits for {SoilWords.For(Analyte)} at all.", nameof(system));
        }
    }

    /// <summary>Gets the rating system.</summary>
    public RatingSystem System { get; }

    /// <summary>Gets what is rated.</summary>
    public SoilAnalyte Analyte { get; }

    /// <summary>Gets the scale of all rows; null where no row is rated.</summary>
    public RatingScale? Scale { get; }

    /// <summary>Gets why no row is rated, whatever its reading; null where rows are.</summary>
    public UnratedNutrient? Unrated { get; }

    /// <summary>A column by a rating system.</summary>
    /// <param name="system">System, checked or not.</param>
    /// <param name="analyte">What is rated.</param>
    /// <param name="extractant">Extractant of all readings.</param>
    /// <param name="unit">Unit of all readings.</param>
    /// <param name="soil">What holds for all rows; a report without readings will do.</param>
    /// <param name="crop">Crop row, for systems whose limits differ by crop; null when none was chosen.</param>
    /// <param name="form">Whether the readings stand for the element or its oxide.</param>
    /// <returns>The column; one that rates no row says why (<see cref="Unrated"/>).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An unknown analyte, extractant, unit, crop row or form.</exception>
    /// <exception cref="ArgumentException">A system without limits for the analyte, or a unit in which nobody measures
    /// it.</exception>
    public static RatingColumn ForSystem(
        RatingSystem system,
        SoilAnalyte analyte,
        Extractant extractant,
        SoilTestUnit unit,
        PlotSoil soil,
        CropRow? crop = null,
        PrintedForm form = PrintedForm.Element
    )
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(soil);
        var reading = SoilReading.FromPrinted(analyte, 0, unit, extractant, form);
        return new(system, reading, soil, Guard.Defined(crop));
    }

    /// <summary>The class of every row.</summary>
    /// <param name="reading">Readings as printed; NaN where there is none.</param>
    /// <param name="places">Takes the place of each class (<see cref="RatingClass.Order"/>), counted from 1 at the poorest; 0
    /// where the row is not rated. The class itself is <c>column.Scale.Classes[place - 1]</c>.</param>
    /// <param name="status">Takes how far each row was answered: outside the domain above the last class printed.</param>
    /// <exception cref="ArgumentException">Columns of unlike length.</exception>
    public void Places(ReadOnlySpan<double> reading, Span<byte> places, Span<RowStatus> status)
    {
        ColumnSpans.SameLength(reading.Length, places.Length, nameof(places));
        ColumnSpans.SameLength(reading.Length, status.Length, nameof(status));
        int classes = Scale?.Classes.Length ?? 0;
        for (int i = 0; i < reading.Length; i++)
        {
            int place = 0;
            status[i] = RowStatus.OutsideDomain;
            if (!NeedRowLimits.CanBeRead(reading[i]))
            {
                status[i] = NeedRowLimits.StatusOfUnusable(reading[i], 0);
            }
            else if (classes > 0 && ComparedValue(reading[i]) is var value && value >= 0)
            {
                int passed = limits.IndexOf(value);
                place = passed < classes ? passed + 1 : 0;
                status[i] = passed < classes ? RowStatus.Answered : RowStatus.OutsideDomain;
            }

            places[i] = (byte)place;
        }
    }

    /// <summary>System, and what is rated.</summary>
    /// <returns>Text such as <c>Delaware fertility index, phosphorus</c>.</returns>
    public override string ToString() => $"{System}, {SoilWords.For(Analyte)}";

    private double ComparedValue(double printed)
    {
        double test = steps.IsAsPrinted ? printed : steps.From(printed);
        return double.IsNaN(indexPh) ? test : ManganeseEquation.NewJersey.IndexAt(test, indexPh);
    }
}
