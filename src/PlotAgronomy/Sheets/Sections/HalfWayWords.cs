using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Sheets;

/// <summary>Half way over the plot: what must be left, and the pace from there on.</summary>
internal static class HalfWayWords
{
    /// <summary>The rule with its figures; nothing where no half way is known.</summary>
    internal static string Rule(ImmutableArray<PlannedWalk> walks)
    {
        var halves = walks.Where(w => w.HalfWay is not null).ToList();
        if (halves.Count == 0)
        {
            return "";
        }

        var timed = halves.Where(w => w.HalfWay!.More.TimePer100Feet is not null).Select(Timed).ToList();
        string who = timed.Count == 0 ? "A" : "The others: a";
        var others = halves.Where(w => w.HalfWay!.More.TimePer100Feet is null).Select(w => $"{who} {Untimed(w)}").Distinct();
        return $"Half way{When(halves)}, weigh what is left and set the pace by it. " + string.Join(" ", [.. timed, .. others]);
    }

    /// <summary>Fillings, where a whole number of halves is left: they are seen without a scale.</summary>
    internal static string Left(HalfWay half) =>
        half.HalfFillingsLeft is { } halves ? Fills(halves) : SheetText.ByHopper(half.Left);

    private static string When(List<PlannedWalk> halves)
    {
        var passes = halves.Select(w => w.HalfWay!.AfterPass).OfType<int>().Distinct().ToList();
        string laid = passes is [var one] ? $", after pass {Amounts.Print(one, 0)}" : "";
        string once = halves.Any(w => w.Pass.IsCrosswise) ? ", or once over where it is each way" : "";
        return $"{laid}{once}";
    }

    private static string Timed(PlannedWalk walk, int place)
    {
        string first = place == 0 ? "100 ft in " : "";
        return $"{Name(walk)}: {SheetText.ByHopper(walk.HalfWay!.More.Left)} or more, {first}{Seconds(walk.HalfWay.More)}; "
            + $"{SheetText.ByHopper(walk.HalfWay.Less.Left)} or less, {Seconds(walk.HalfWay.Less)}.";
    }

    private static string Untimed(PlannedWalk walk) =>
        $"tenth more, {Times(walk.HalfWay!.More)} as long; a tenth less, {Times(walk.HalfWay.Less)}.";

    private static string Name(PlannedWalk walk) =>
        walk.Seed is { } seed ? SheetText.Name(seed.Kinds[0].Planned.Kind) : walk.What;

    private static string Seconds(HalfWayTurn turn) => Amounts.Print(turn.TimePer100Feet!.Value, "s", 0);

    private static string Times(HalfWayTurn turn) => $"{Amounts.Print(turn.TimesAsLong, 1)} times";

    private static string Fills(int halves)
    {
        string whole = halves == 1 ? "" : Amounts.Print(halves / 2, 0);
        string half = halves % 2 == 0 ? "" : "1/2";
        string count = $"{whole} {half}".Trim();
        return halves > 2 ? $"{count} fills" : $"{count} fill";
    }
}
