using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Finds the reading a scale or system was made for, in that system's unit. Never converts between extractants.</summary>
internal static class ReportReadings
{
    /// <summary>Limits in lb/ac stand for the furrow slice of about 2,000,000 lb of soil: twice the ppm. Source SOIL-PA1.</summary>
    private const double PoundsPerAcrePerPpm = 2;

    private const double PhosphatePerPhosphorus = 2.2914;  // molar masses, source DEF-UNITS
    private const double PotashPerPotassium = 1.2046;
    private const double LimePerCalcium = 1.3992;
    private const double MagnesiaPerMagnesium = 1.6583;
    private const double KilogramsPerHectarePerPoundPerAcre = 0.45359237 * 10_000 / 4046.8564224;

    internal static (SoilReading Reading, double Value)? Find(SoilReport report, SoilAnalyte analyte, ImmutableArray<Extractant> accepted, SoilTestUnit unit)
    {
        foreach (var reading in report.FindAll(analyte))
        {
            if (IsAccepted(reading.Extractant, accepted) && In(unit, reading, report) is { } value)
            {
                return (reading, value);
            }
        }

        return null;
    }

    /// <summary>A system made for Mehlich-3 takes it however it was measured; one made for a way of measuring takes only that.</summary>
    internal static bool IsAccepted(Extractant given, ImmutableArray<Extractant> accepted) =>
        accepted.Contains(given)
        || (given is Extractant.Mehlich3Colorimetric or Extractant.Mehlich3Icp && accepted.Contains(Extractant.Mehlich3));

    internal static double? In(SoilTestUnit unit, SoilReading reading, SoilReport report)
    {
        double element = reading.PrintedValue / (reading.Form == PrintedForm.Oxide ? OxidePerElement(reading.Analyte) : 1);
        if (reading.Unit == unit)
        {
            return element;
        }

        return PartsPerMillion(element, reading, report) is not { } ppm ? null : unit switch
        {
            SoilTestUnit.PartsPerMillion => ppm,
            SoilTestUnit.PoundsPerAcre or SoilTestUnit.OklahomaIndex => ppm * PoundsPerAcrePerPpm,
            SoilTestUnit.MilligramsPerCubicDecimeter => WeightPerVolume(report) is { } density ? ppm * density : null,
            _ => null,
        };
    }

    private static double? PartsPerMillion(double element, SoilReading reading, SoilReport report) => reading.Unit switch
    {
        SoilTestUnit.PartsPerMillion => element,
        SoilTestUnit.PoundsPerAcre or SoilTestUnit.OklahomaIndex => element / PoundsPerAcrePerPpm,
        SoilTestUnit.KilogramsPerHectare => element / KilogramsPerHectarePerPoundPerAcre / PoundsPerAcrePerPpm,
        SoilTestUnit.MilligramsPerCubicDecimeter => WeightPerVolume(report) is { } density ? element / density : null,
        SoilTestUnit.DelawareIndex => element * DelawarePpmPerIndex(reading.Analyte),
        _ => null,
    };

    private static double? WeightPerVolume(SoilReport report)
    {
        if (report.WeightPerVolume is not { } density)
        {
            return null;
        }

        double gramsPerCubicCentimeter = density.GramsPerCubicCentimeter;
        return gramsPerCubicCentimeter;
    }

    private static double? DelawarePpmPerIndex(SoilAnalyte analyte) => analyte switch
    {
        SoilAnalyte.Phosphorus => SystemConstants.Value("DE-index-P"),
        SoilAnalyte.Potassium => SystemConstants.Value("DE-index-K"),
        SoilAnalyte.Magnesium => SystemConstants.Value("DE-index-Mg"),
        SoilAnalyte.Calcium => SystemConstants.Value("DE-index-Ca"),
        _ => null,
    };

    private static double OxidePerElement(SoilAnalyte analyte) => analyte switch
    {
        SoilAnalyte.Phosphorus => PhosphatePerPhosphorus,
        SoilAnalyte.Potassium => PotashPerPotassium,
        SoilAnalyte.Calcium => LimePerCalcium,
        _ => MagnesiaPerMagnesium,
    };
}
