using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Says when a test run takes much of the seed of a small plot, and which shorter course would do.</summary>
internal static class TestRunFinding
{
    private const int WholeFeet = 10;

    internal static IEnumerable<Finding> For(Mass load, Length course, Mass used)
    {
        double loaded = load.Pounds,
            taken = used.Pounds,
            feet = course.Feet,
            limit = SpreadingConstants.All["test-run-share"];
        double percent = 100 * taken / loaded;
        if (!Tolerance.IsAbove(percent, limit))
        {
            yield break;
        }

        double enough = Math.Floor(feet * limit / percent / WholeFeet) * WholeFeet,
            shorter = Math.Min(feet, Math.Max(enough, SpreadingConstants.All["test-run-short"]));
        yield return FindingCatalog.Create(
            SpreadingCodes.TestRunMuch,
            ("run", Amounts.Print(feet, 0)),
            ("percent", Amounts.Print(percent, 0)),
            ("short", Amounts.Print(shorter, 0)),
            ("catch", Amounts.PrintForScale(Mass.FromPounds(taken * shorter / feet))),
            ("spare", Amounts.PrintForScale(Mass.FromPounds(loaded * (1 + SpreadingConstants.All["spare-seed"] / 100))))
        );
    }
}
