using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>The way from a printed number to a system's unit, found once for all numbers printed the same way.</summary>
internal readonly struct ReadingSteps
{
    /// <summary>Limits in lb/ac stand for the furrow slice.</summary>
    private static readonly double PoundsPerAcrePerPpm = NutrientConstants.All["lb-per-ac-per-ppm"];

    private readonly SoilTestUnit printed;
    private readonly SoilTestUnit wanted;

    /// <summary>Pounds of what is printed in a pound of the element: 1 for the element itself.</summary>
    private readonly double perElement;

    /// <summary>ppm in a unit of Delaware's index, g in a cubic centimeter of soil; NaN where it is not asked for.</summary>
    private readonly double perIndexUnit;
    private readonly double density;

    private ReadingSteps(SoilReading reading, SoilTestUnit wanted, double perIndexUnit, double density)
    {
        printed = reading.Unit;
        this.wanted = wanted;
        this.perIndexUnit = perIndexUnit;
        this.density = density;
        perElement = reading.Form == PrintedForm.Oxide ? Cations.OxideFactorOf(reading.Analyte) : 1;
        IsAsPrinted = printed == wanted && perElement == 1;
    }

    /// <summary>Whether the number is taken as it is printed.</summary>
    internal bool IsAsPrinted { get; }

    /// <summary>The way from how a reading is printed to a unit; null where there is none. The value of the reading is not looked
    /// at.</summary>
    internal static ReadingSteps? Between(SoilReading reading, SoilTestUnit wanted, SoilReport report)
    {
        if (reading.Unit == wanted)
        {
            return new(reading, wanted, double.NaN, double.NaN);
        }

        if (!IsReached(reading.Unit, canBeIndex: true) || !IsReached(wanted, canBeIndex: false))
        {
            return null;
        }

        double perIndexUnit = double.NaN;
        if (reading.Unit == SoilTestUnit.DelawareIndex)
        {
            if (IndexScale.Find(SoilTestUnit.DelawareIndex, reading.Analyte) is not { } scale)
            {
                return null;
            }

            perIndexUnit = scale.PerIndexUnit;
        }

        double density = double.NaN;
        if (reading.Unit == SoilTestUnit.MilligramsPerCubicDecimeter || wanted == SoilTestUnit.MilligramsPerCubicDecimeter)
        {
            if (report.WeightPerVolume is not { } known)
            {
                return null;
            }

            double gramsPerCubicCentimeter = known.GramsPerCubicCentimeter;
            density = Guard.Above(gramsPerCubicCentimeter, 0, "g/cm3", "report.WeightPerVolume");
        }

        return new(reading, wanted, perIndexUnit, density);
    }

    /// <summary>The number in the wanted unit, of the element.</summary>
    internal double From(double printedValue)
    {
        double element = printedValue / perElement;
        return printed == wanted ? element : FromPartsPerMillion(PartsPerMillion(element));
    }

    private static bool IsReached(SoilTestUnit unit, bool canBeIndex) =>
        unit
            is SoilTestUnit.PartsPerMillion
                or SoilTestUnit.PoundsPerAcre
                or SoilTestUnit.OklahomaIndex
                or SoilTestUnit.MilligramsPerCubicDecimeter
        || (canBeIndex && unit is SoilTestUnit.KilogramsPerHectare or SoilTestUnit.DelawareIndex);

    private double PartsPerMillion(double element) =>
        printed switch
        {
            SoilTestUnit.PoundsPerAcre or SoilTestUnit.OklahomaIndex => element / PoundsPerAcrePerPpm,
            SoilTestUnit.KilogramsPerHectare => ApplicationRate.FromKilogramsPerHectare(element).PoundsPerAcre
                / PoundsPerAcrePerPpm,
            SoilTestUnit.MilligramsPerCubicDecimeter => element / density,
            SoilTestUnit.DelawareIndex => element * perIndexUnit,
            _ => element,
        };

    private double FromPartsPerMillion(double ppm) =>
        wanted switch
        {
            SoilTestUnit.PoundsPerAcre or SoilTestUnit.OklahomaIndex => ppm * PoundsPerAcrePerPpm,
            SoilTestUnit.MilligramsPerCubicDecimeter => ppm * density,
            _ => ppm,
        };
}
