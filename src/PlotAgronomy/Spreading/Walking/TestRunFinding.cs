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
            feet = course.Feet;
        if (!IsMuch(loaded, taken))
        {
            yield break;
        }

        double shorter = Spared(load, course, used).Feet;
        yield return FindingCatalog.Create(
            SpreadingCodes.TestRunMuch,
            ("run", Amounts.Print(feet, 0)),
            ("percent", Amounts.Print(100 * taken / loaded, 0)),
            ("short", Amounts.Print(shorter, 0)),
            ("catch", Amounts.PrintForScale(Mass.FromPounds(taken * shorter / feet))),
            ("spare", Amounts.PrintForScale(Mass.FromPounds(loaded * (1 + SpreadingConstants.All["spare-seed"] / 100))))
        );
    }

    /// <summary>The course, or a shorter one that takes less of the load; never too short to be weighed.</summary>
    internal static Length Spared(Mass load, Length course, Mass used)
    {
        double loaded = load.Pounds,
            taken = used.Pounds,
            feet = course.Feet;
        if (!IsMuch(loaded, taken))
        {
            return course;
        }

        double enough = Math.Floor(feet * loaded * MostPercent / 100 / taken / WholeFeet) * WholeFeet;
        return Length.FromFeet(Math.Min(feet, Math.Max(enough, SpreadingConstants.All["test-run-short"])));
    }

    private static double MostPercent => SpreadingConstants.All["test-run-share"];

    private static bool IsMuch(double loaded, double taken) => Tolerance.IsAbove(100 * taken / loaded, MostPercent);
}
