using PlotAgronomy.Fertilizers;
using PlotAgronomy.Records;

namespace PlotAgronomy.Sheets;

/// <summary>The lines of a plot's history.</summary>
internal static class HistoryWords
{
    internal static string Done(PlotHistory plot)
    {
        var kinds = plot.Done.GroupBy(e => e.Sort).Select(g => $"{g.Key} {Amounts.Print(g.Count(), 0)}");
        return plot.Done.IsEmpty
            ? "nothing yet"
            : $"{string.Join(", ", kinds)}, from {plot.Done[0].On.Year} to {plot.Done[^1].On.Year}";
    }

    internal static string Owed(PlotOwed owed)
    {
        var lines = new List<string>();
        if (owed.Lime.TryGet(out var lime) && !owed.Lime.Value.Rate.IsNone)
        {
            lines.Add(
                $"lime {Amounts.Print(lime.StillOwed, "lb", 0)} of {Amounts.Print(lime.Need, "lb", 0)}"
            );
        }

        lines.AddRange(owed.Nutrients.Where(n => n.IsAsked).Select(Nutrient));
        return lines.Count > 0 ? string.Join("; ", lines) : "no need stands in the book";
    }

    private static string Nutrient(NutrientBalance balance)
    {
        string name = SheetText.Symbol(balance.Nutrient);
        return balance.IsMet
            ? $"{name} nothing, {SheetText.Rate(balance.Delivered)} went on for {SheetText.Rate(balance.AtLeast)}"
            : $"{name} {SheetText.Rate(balance.Missing)} of {SheetText.Rate(balance.AtLeast)}";
    }

    internal static IEnumerable<string> Soil(PlotHistory plot) =>
        plot.Trends.Select(t =>
            $"{Capital(t.What)}: {Amounts.Print(t.Points[0].Value, 1)} in {t.Points[0].On.Year} to "
            + $"{Amounts.Print(t.Points[^1].Value, 1)} in {t.Points[^1].On.Year}, {Amounts.Print(t.Points.Length, 0)} tests: "
            + $"{Standing(t)}."
        );

    internal static IEnumerable<string> Grown(PlotHistory plot)
    {
        var last = plot.Stands.GroupBy(s => s.SownOn.Year).LastOrDefault();
        if (last is not null)
        {
            yield return $"Stands of {last.Key}: {string.Join("; ", last.Select(Stand))}.";
        }

        if (plot.Cages is [.., var cages])
        {
            yield return $"Cages of {SheetText.Date(cages.Clipping.On)}: {cages}.";
        }
    }

    private static string Stand(StandOutcome stand)
    {
        string verdict = stand.Verdict switch
        {
            StandVerdict.Full => "keep it",
            StandVerdict.Thin => "thin",
            StandVerdict.Failed => "failed",
            _ => "unsure",
        };
        return $"{stand}, {verdict}";
    }

    private static string Standing(ReadingTrend trend) =>
        trend.IsTrend ? "a trend"
        : trend.IsRealChange == true ? "more than noise, no trend yet"
        : "no real change";

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
