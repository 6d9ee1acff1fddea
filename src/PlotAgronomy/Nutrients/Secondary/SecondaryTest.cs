using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Finds the number a rule holds against its limits: the test in the rule's unit, or the index made of it.</summary>
internal sealed class SecondaryTest(string ruleTitle, SoilReport report, List<Finding>? findings)
{
    /// <summary>The number, or null with a finding.</summary>
    internal double? ValueFor(SoilAnalyte analyte, SecondaryRuleRow row)
    {
        var readings = report.FindAll(analyte);
        var reading = Choose(readings, row);
        if (reading is null)
        {
            findings?.Add(
                readings.IsEmpty
                    ? FindingCatalog.Create(
                        NutrientCodes.SecondaryTestMissing,
                        ("rule", ruleTitle),
                        ("analyte", SoilWords.For(analyte))
                    )
                    : NotAccepted(analyte, Wanted(row), SoilWords.For(readings[0].Extractant))
            );
            return null;
        }

        if (IsContradicted(readings, reading))
        {
            findings?.AddRange(ReadingTwice.OfAnalyte(report, analyte));
            return null;
        }

        return InUnitOf(row, reading) is not { } value ? null
            : row.ManganeseIndex is { } index ? IndexOf(index, reading)
            : value;
    }

    /// <summary>Of several kinds the one in the rule's own unit: never the order of the report.</summary>
    private static SoilReading? Choose(ImmutableArray<SoilReading> readings, SecondaryRuleRow row)
    {
        SoilReading? best = null;
        foreach (var reading in readings)
        {
            if (
                (
                    row.Extractants.IsEmpty
                        ? reading.Extractant == Extractant.NotStated
                        : ReportReadings.IsAccepted(reading.Extractant, row.Extractants)
                ) && (best is null || Rank(reading).CompareTo(Rank(best)) < 0)
            )
            {
                best = reading;
            }
        }

        return best;

        (bool, int, int, int) Rank(SoilReading r) => (r.Unit != row.Unit, (int)r.Extractant, (int)r.Unit, (int)r.Form);
    }

    /// <summary>A limit that names no extractant judges no reading that does.</summary>
    private static string Wanted(SecondaryRuleRow row) =>
        row.Extractants.IsEmpty ? "a test whose extractant it does not name" : SoilWords.Or(row.Extractants);

    private static bool IsContradicted(ImmutableArray<SoilReading> readings, SoilReading reading)
    {
        foreach (var other in readings)
        {
            if (
                other.PrintedValue != reading.PrintedValue
                && (other.Extractant, other.Unit, other.Form) == (reading.Extractant, reading.Unit, reading.Form)
            )
            {
                return true;
            }
        }

        return false;
    }

    private double? InUnitOf(SecondaryRuleRow row, SoilReading reading)
    {
        if (reading.Unit == row.Unit)
        {
            return reading.PrintedValue;
        }

        if (
            row.Unit is SoilTestUnit.PartsPerMillion or SoilTestUnit.PoundsPerAcre
            && reading.Unit
                is SoilTestUnit.PartsPerMillion
                    or SoilTestUnit.PoundsPerAcre
                    or SoilTestUnit.KilogramsPerHectare
                    or SoilTestUnit.OklahomaIndex
            && (!SoilWords.IsIndex(reading.Unit) || IndexScale.Accepts(reading.Extractant))
        )
        {
            var conversion = reading.ConvertTo(row.Unit.Value, SampledSoil.For(report));
            findings?.AddRange(conversion.Findings);
            return conversion.Converted.PrintedValue;
        }

        findings?.Add(NotAccepted(reading.Analyte, SoilWords.For(row.Unit!.Value), SoilWords.For(reading.Unit)));
        return null;
    }

    private double? IndexOf(Func<SoilReading, WaterPh, ManganeseAvailability> index, SoilReading reading)
    {
        if (report.WaterPh is { } ph)
        {
            return index(reading, ph).Index;
        }

        findings?.Add(FindingCatalog.Create(NutrientCodes.SecondaryFactMissing, ("rule", ruleTitle), ("fact", "The water pH")));
        return null;
    }

    private Finding NotAccepted(SoilAnalyte analyte, string wanted, string given) =>
        FindingCatalog.Create(
            NutrientCodes.SecondaryTestNotAccepted,
            ("rule", ruleTitle),
            ("analyte", SoilWords.For(analyte)),
            ("wanted", wanted),
            ("given", given)
        );
}
