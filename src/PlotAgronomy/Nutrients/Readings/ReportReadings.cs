using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Finds the reading a scale or system was made for, in that system's unit. Never converts between
/// extractants.</summary>
internal static class ReportReadings
{
    /// <summary>The reading to use. Of several, the extractant the system names first, then its own unit: never the order of the
    /// report; none where two of that kind differ.</summary>
    internal static (SoilReading Reading, double Value)? Find(
        SoilReport report,
        SoilAnalyte analyte,
        ImmutableArray<Extractant> accepted,
        SoilTestUnit unit
    )
    {
        (SoilReading Reading, double Value)? best = null;
        foreach (var reading in report.Readings)
        {
            if (
                reading.Analyte == analyte
                && IsAccepted(reading.Extractant, accepted)
                && In(unit, reading, report) is { } value
                && (best is not { } other || Rank(reading, value).CompareTo(Rank(other.Reading, other.Value)) < 0)
            )
            {
                best = (reading, value);
            }
        }

        return best is { } found && IsContradicted(found.Reading, report) ? null : best;

        (bool, int, bool, SoilTestUnit, Extractant, double) Rank(SoilReading reading, double value) =>
            (
                accepted.IndexOf(reading.Extractant) < 0,
                accepted.IndexOf(reading.Extractant),
                reading.Unit != unit,
                reading.Unit,
                reading.Extractant,
                value
            );
    }

    /// <summary>Whether a report holds any reading of an analyte.</summary>
    internal static bool Holds(SoilReport report, SoilAnalyte analyte)
    {
        foreach (var reading in report.Readings)
        {
            if (reading.Analyte == analyte)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether another reading of the same kind says something else.</summary>
    private static bool IsContradicted(SoilReading reading, SoilReport report)
    {
        foreach (var other in report.Readings)
        {
            if (other.Analyte == reading.Analyte && other != reading && ReadingKinds.AreOfOneKind(other, reading))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A system made for Mehlich-3 takes it however it was measured; one made for a way of measuring takes only
    /// that.</summary>
    internal static bool IsAccepted(Extractant given, ImmutableArray<Extractant> accepted) =>
        accepted.Contains(given)
        || (given is Extractant.Mehlich3Colorimetric or Extractant.Mehlich3Icp && accepted.Contains(Extractant.Mehlich3));

    internal static double? In(SoilTestUnit unit, SoilReading reading, SoilReport report) =>
        ReadingSteps.Between(reading, unit, report)?.From(reading.PrintedValue);
}
