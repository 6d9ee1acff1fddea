using System.Collections.Immutable;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Columns;

/// <summary>The phosphate or potash that many soils need by one recommendation system: a row of a column is a soil.</summary>
/// <remarks>
/// <para>A row's rate is that of <see cref="RecommendationSystem.Recommend(PlotSoil, CropUse)"/>, bit for bit: lb/ac of P2O5 or
/// K2O, not rounded; NaN where the system does not answer. Where a range is published, <see cref="Ranges"/> gives its ends. Two
/// things differ: a value that cannot be refuses its row, not the whole call, and a row without a reading is not answered, not
/// even by a rating that the laboratory printed.</para>
/// <para>A column is made once, does not change, and may be used by several threads at once; a slice of rows gives what the whole
/// gives. Build-up and replacement, ratings and the working of one row are asked of the system itself.</para>
/// </remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class NeedColumn
{
    private readonly NeedRows rows;
    private readonly ImmutableArray<Finding> findings;

    private NeedColumn(RecommendationSystem system, CropUse crop, NeedQuestion question)
    {
        System = system;
        Crop = crop;
        Nutrient = question.Nutrient;
        Unanswered = question.Unanswered;
        rows = question.Rows();
        ReadsExchangeCapacity = rows.ReadsCapacity;
        RowFindings = rows.Flags.Findings;
        findings = question.Findings;
    }

    /// <summary>Gets the system.</summary>
    public RecommendationSystem System { get; }

    /// <summary>Gets the crop of all rows and its use.</summary>
    public CropUse Crop { get; }

    /// <summary>Gets the nutrient, P as P2O5 and K as K2O.</summary>
    public PlantNutrient Nutrient { get; }

    /// <summary>Gets why no row is answered, whatever its reading; null where rows are answered.</summary>
    public UnansweredNutrient? Unanswered { get; }

    /// <summary>Gets a value indicating whether the exchange capacity of each row is asked for: the system goes by it, and the
    /// soil does not state one for all rows.</summary>
    public bool ReadsExchangeCapacity { get; }

    /// <summary>Gets what the flags of a row mean.</summary>
    public RowFindings RowFindings { get; }

    /// <summary>Gets what holds for every row: an edition that was superseded, numbers from memory, a sample of another
    /// depth.</summary>
    public ImmutableArray<Finding> Findings => findings;

    /// <summary>A column for phosphate, from readings of phosphorus.</summary>
    /// <param name="system">System, checked or not.</param>
    /// <param name="crop">Crop of all rows, its yield and use.</param>
    /// <param name="extractant">Extractant of all readings.</param>
    /// <param name="unit">Unit of all readings.</param>
    /// <param name="soil">What holds for all rows: soil class, moisture of the sample, region; a report without readings will
    /// do.</param>
    /// <param name="form">Whether the readings stand for the element or its oxide.</param>
    /// <returns>The column; one that answers no row says why (<see cref="Unanswered"/>).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An unknown extractant, unit or form.</exception>
    /// <exception cref="ArgumentException">A unit in which nobody measures phosphorus.</exception>
    public static NeedColumn ForPhosphate(
        RecommendationSystem system,
        CropUse crop,
        Extractant extractant,
        SoilTestUnit unit,
        PlotSoil soil,
        PrintedForm form = PrintedForm.Element
    )
    {
        var reading = SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 0, unit, extractant, form);
        return ForReading(system, PlantNutrient.Phosphate, crop, reading, soil);
    }

    /// <summary>A column for potash, from readings of potassium.</summary>
    /// <param name="system">System, checked or not.</param>
    /// <param name="crop">Crop of all rows, its yield and use.</param>
    /// <param name="extractant">Extractant of all readings.</param>
    /// <param name="unit">Unit of all readings.</param>
    /// <param name="soil">What holds for all rows: soil class, moisture of the sample, region, exchange capacity where it is the
    /// same everywhere; a report without readings will do.</param>
    /// <param name="form">Whether the readings stand for the element or its oxide.</param>
    /// <returns>The column; one that answers no row says why (<see cref="Unanswered"/>).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An unknown extractant, unit or form.</exception>
    /// <exception cref="ArgumentException">A unit in which nobody measures potassium, or a subsoil reading that South Carolina
    /// cannot read.</exception>
    public static NeedColumn ForPotash(
        RecommendationSystem system,
        CropUse crop,
        Extractant extractant,
        SoilTestUnit unit,
        PlotSoil soil,
        PrintedForm form = PrintedForm.Element
    )
    {
        var reading = SoilReading.FromPrinted(SoilAnalyte.Potassium, 0, unit, extractant, form);
        return ForReading(system, PlantNutrient.Potash, crop, reading, soil);
    }

    /// <summary>The rate of every row. Where a system prints only a range, its lower end.</summary>
    /// <param name="reading">Readings as printed; NaN where there is none.</param>
    /// <param name="exchangeCapacity">Exchange capacity in meq/100 g; NaN where it is not known. Empty for a column that does not
    /// read it (<see cref="ReadsExchangeCapacity"/>).</param>
    /// <param name="rates">Takes the rates in lb/ac.</param>
    /// <param name="status">Takes how far each row was answered.</param>
    /// <param name="flags">Takes why, and what to look at (<see cref="RowFindings"/>); empty where nobody asks.</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over a reading.</exception>
    public void Rates(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> exchangeCapacity,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        Check(reading, exchangeCapacity, rates, status, flags, nameof(rates));
        rows.Rates(reading, exchangeCapacity, rates, status, flags);
    }

    /// <summary>The range that is published about the rate of every row; the rate itself twice where one figure is
    /// published.</summary>
    /// <param name="reading">Readings as printed; NaN where there is none.</param>
    /// <param name="exchangeCapacity">Exchange capacity in meq/100 g; NaN where it is not known. Empty for a column that does not
    /// read it (<see cref="ReadsExchangeCapacity"/>).</param>
    /// <param name="low">Takes the lower ends in lb/ac.</param>
    /// <param name="high">Takes the upper ends in lb/ac.</param>
    /// <param name="status">Takes how far each row was answered, as <see cref="Rates"/> does.</param>
    /// <param name="flags">Takes why, and what to look at (<see cref="RowFindings"/>); empty where nobody asks.</param>
    /// <exception cref="ArgumentException">Columns of unlike length, or a result that lies over a reading.</exception>
    public void Ranges(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> exchangeCapacity,
        Span<double> low,
        Span<double> high,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        Check(reading, exchangeCapacity, low, status, flags, nameof(low));
        ColumnSpans.SameLength(reading.Length, high.Length, nameof(high));
        ColumnSpans.Apart(reading, high, nameof(high));
        ColumnSpans.Apart(exchangeCapacity, high, nameof(high));
        ColumnSpans.Apart<double>(low, high, nameof(high));
        rows.Ranges(reading, exchangeCapacity, low, high, status, flags);
    }

    /// <summary>System, nutrient and crop.</summary>
    /// <returns>Text such as <c>Tri-State 2020 (2020), K2O for corn, 180 bu/ac, browsed</c>.</returns>
    public override string ToString() => $"{System}, {SoilWords.For(Nutrient)} for {Crop}";

    private static NeedColumn ForReading(
        RecommendationSystem system,
        PlantNutrient nutrient,
        CropUse crop,
        SoilReading reading,
        PlotSoil soil
    )
    {
        ArgumentNullException.ThrowIfNull(system);
        ArgumentNullException.ThrowIfNull(crop);
        ArgumentNullException.ThrowIfNull(soil);
        return new(system, crop, new NeedQuestion(system, nutrient, crop, reading, soil));
    }

    private void Check(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> exchangeCapacity,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags,
        string nameOfRates
    )
    {
        ColumnSpans.SameLength(ReadsExchangeCapacity ? reading.Length : 0, exchangeCapacity.Length, nameof(exchangeCapacity));
        ColumnSpans.SameLength(reading.Length, rates.Length, nameOfRates);
        ColumnSpans.SameLength(reading.Length, status.Length, nameof(status));
        ColumnSpans.SameLength(flags.IsEmpty ? 0 : reading.Length, flags.Length, nameof(flags));
        ColumnSpans.Apart(reading, rates, nameOfRates);
        ColumnSpans.Apart(exchangeCapacity, rates, nameOfRates);
    }
}
