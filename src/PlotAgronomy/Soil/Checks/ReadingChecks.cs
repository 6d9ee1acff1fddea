using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Plausibility of single readings: unit, extractant, oxide, size, and the step from an earlier report.</summary>
internal static class ReadingChecks
{
    /// <summary>Above these a concentration in ppm by weight is far outside what farmed soils show.</summary>
    private static readonly (SoilAnalyte Analyte, double Ppm)[] HighestPpm =
    [
        (SoilAnalyte.Phosphorus, SoilConstants.All["phosphorus-high"]),
        (SoilAnalyte.Potassium, SoilConstants.All["potassium-high"]),
        (SoilAnalyte.Magnesium, SoilConstants.All["magnesium-high"]),
        (SoilAnalyte.Calcium, SoilConstants.All["calcium-high"]),
    ];

    /// <summary>lb/ac in the furrow slice for each ppm.</summary>
    private static double DoubledRatio => SoilUnitMath.PoundsPerAcreFromPpm(1, SampledLayer.FurrowSlice.SoilPoundsPerAcre);

    private static double RatioBand => SoilConstants.All["report-ratio-band"];

    internal static IEnumerable<Finding> Of(SoilReport report)
    {
        var program = SoilProgram.For(report);
        foreach (var reading in report.Readings.Where(r => r.Analyte is not SoilAnalyte.SolubleSalts))
        {
            foreach (var finding in OfOne(reading, report, program))
            {
                yield return finding;
            }
        }
    }

    internal static IEnumerable<Finding> Against(SoilReport report, SoilReport earlier)
    {
        foreach (var reading in report.Readings)
        {
            if (
                earlier.Find(reading.Analyte, reading.Extractant) is not { PrintedValue: > 0 } before
                || before.Unit != reading.Unit
                || before.Form != reading.Form
            )
            {
                continue;
            }

            double ratio = reading.PrintedValue / before.PrintedValue;
            string printed = Amounts.Print(ratio, 2);
            bool hasOxideName = reading.Analyte is SoilAnalyte.Phosphorus && reading.Form == PrintedForm.Element;
            double oxide = hasOxideName ? Cations.OxideFactorOf(reading.Analyte) : 0;
            bool nearOxide =
                hasOxideName
                && Math.Abs(ratio - oxide) < Math.Abs(ratio - DoubledRatio)
                && Math.Abs(ratio / oxide - 1) <= RatioBand;
            if (nearOxide)
            {
                yield return FindingCatalog.Create(
                    SoilCodes.OxideTypedAsElement,
                    ("analyte", SoilWords.Opening(reading.Analyte)),
                    ("ratio", printed),
                    ("oxide", "P2O5"),
                    ("element", "P")
                );
            }
            else if (Math.Abs(ratio / DoubledRatio - 1) <= RatioBand || Math.Abs(ratio * DoubledRatio - 1) <= RatioBand)
            {
                yield return FindingCatalog.Create(
                    SoilCodes.DoubledSince,
                    ("analyte", SoilWords.Opening(reading.Analyte)),
                    ("ratio", printed)
                );
            }
        }
    }

    private static IEnumerable<Finding> OfOne(SoilReading reading, SoilReport report, SoilProgram? program)
    {
        string analyte = SoilWords.Opening(reading.Analyte);
        bool phosphorusOrPotassium = reading.Analyte is SoilAnalyte.Phosphorus or SoilAnalyte.Potassium;
        if (reading.Form == PrintedForm.Oxide)
        {
            yield return FindingCatalog.Create(SoilCodes.OxideNotPrograms, ("analyte", analyte));
        }

        if (phosphorusOrPotassium && reading.Extractant == Extractant.NotStated)
        {
            yield return FindingCatalog.Create(SoilCodes.ExtractantMissing, ("analyte", analyte));
        }

        if (program is not null)
        {
            if (phosphorusOrPotassium && !program.Units.Contains(reading.Unit))
            {
                yield return FindingCatalog.Create(
                    SoilCodes.UnitNotPrograms,
                    ("analyte", analyte),
                    ("unit", SoilWords.For(reading.Unit)),
                    ("program", program.Institution.Name),
                    ("expected", SoilWords.Or(program.Units))
                );
            }

            if (
                reading.Extractant != Extractant.NotStated
                && !program.ExtractantsFor(reading.Analyte).IsEmpty
                && !program.Uses(reading.Analyte, reading.Extractant)
            )
            {
                yield return FindingCatalog.Create(
                    SoilCodes.ExtractantNotPrograms,
                    ("analyte", analyte),
                    ("extractant", SoilWords.For(reading.Extractant)),
                    ("program", program.Institution.Name),
                    ("expected", SoilWords.Or(program.ExtractantsFor(reading.Analyte)))
                );
            }
        }
        else if (phosphorusOrPotassium && reading.Unit is (SoilTestUnit.PartsPerMillion or SoilTestUnit.PoundsPerAcre))
        {
            yield return FindingCatalog.Create(
                SoilCodes.UnitAsk,
                ("analyte", analyte),
                ("value", Number(reading.PrintedValue)),
                ("laboratory", report.Laboratory)
            );
        }

        foreach (var (limited, ppm) in HighestPpm)
        {
            double limit = reading.Unit == SoilTestUnit.PartsPerMillion ? ppm : DoubledRatio * ppm;
            if (
                limited == reading.Analyte
                && reading.Unit is (SoilTestUnit.PartsPerMillion or SoilTestUnit.PoundsPerAcre or SoilTestUnit.OklahomaIndex)
                && reading.PrintedValue > limit
            )
            {
                yield return FindingCatalog.Create(
                    SoilCodes.ValueHighForUnit,
                    ("analyte", analyte),
                    ("value", SoilWords.Printed(reading.PrintedValue, reading.Unit)),
                    ("limit", Number(limit))
                );
            }
        }
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
