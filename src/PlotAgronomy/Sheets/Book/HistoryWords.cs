using PlotAgronomy.Calendar;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Records;

namespace PlotAgronomy.Sheets;

/// <summary>The lines of a plot's history.</summary>
internal static class HistoryWords
{
    internal static string Done(PlotHistory plot) =>
        plot.Worked is var (first, last)
            ? $"Done, {Span(first, last)}: "
                + $"{string.Join(", ", plot.WorkBySort.Select(w => $"{w.Sort} {Amounts.Print(w.Count, 0)}"))}."
            : "Done: nothing yet.";

    internal static string Owed(PlotOwed owed)
    {
        var lines = new List<string>();
        bool isLime = owed.Lime.TryGet(out var lime) && !lime.Rate.IsNone;
        if (isLime)
        {
            lines.Add($"lime {Amounts.Print(lime!.StillOwed, "lb", 0)} of {Amounts.Print(lime.Need, "lb", 0)}");
        }

        var asked = owed.Nutrients.Where(n => n.IsAsked && n.PercentOfNeed is not null).ToList();
        lines.AddRange(asked.Where(n => !n.IsMet).Select(Missing));
        if (lines.Count > 0)
        {
            return $"Owed: {string.Join("; ", lines)}.";
        }

        return isLime || asked.Count > 0 ? "Owed: nothing." : "Owed: not known, no need stands in the book.";
    }

    internal static IEnumerable<string> Soil(PlotHistory plot)
    {
        var changed = plot.Trends.Where(t => t.IsTrend || t.IsRealChange == true).ToList();
        foreach (var trend in changed)
        {
            yield return $"{Capital(trend.What)}: {Amounts.Print(trend.Points[0].Value, 1)} to "
                + $"{Amounts.Print(trend.Points[^1].Value, 1)} over {Amounts.Print(trend.Points.Length, 0)} tests, "
                + $"{Standing(trend)}.";
        }

        if (plot.Trends.Except(changed).Select(t => t.What).ToList() is { Count: > 0 } same)
        {
            yield return $"No real change: {string.Join(", ", same.Distinct())}.";
        }
    }

    private static string Missing(NutrientBalance balance) =>
        $"{SheetText.Symbol(balance.Nutrient)} {SheetText.Rate(balance.Missing)} of {SheetText.Rate(balance.AtLeast)}";

    private static string Span(int first, int last) => first == last ? $"{first}" : $"{first} to {last}";

    internal static IEnumerable<string> Grown(PlotHistory plot)
    {
        var last = plot.Stands.GroupBy(s => s.SownOn.Year).LastOrDefault();
        if (last is not null)
        {
            yield return $"Stands of {last.Key}: {string.Join("; ", last.Select(Stand))}.";
        }

        foreach (var remedy in plot.Remedies)
        {
            yield return Remedy(remedy);
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
            StandVerdict.Thin => "thicken it",
            StandVerdict.Failed => "start over",
            _ => "unsure",
        };
        return $"{stand}, {verdict}";
    }

    private static string Remedy(StandRemedy remedy)
    {
        string to = remedy.Stand.Verdict == StandVerdict.Thin ? "To thicken" : "To start over";
        string asked = $"{to} {remedy.Stand.Name}";
        string day = SheetText.Date(remedy.On);
        if (!remedy.IsPlaceKnown)
        {
            return $"{asked}: say in the plan where the plot lies, or no kind can be named that is still in time.";
        }

        return remedy.InTime.IsEmpty
            ? $"{asked}: on {day} nothing is in time any more by printed dates and frost. Wait for the next season."
            : $"{asked}, still in time on {day}: {string.Join("; ", remedy.InTime.Select(InTime))}.";
    }

    private static string InTime(KindDates dates) =>
        dates.LastSensible is { } last
            ? $"{SheetText.Name(dates.Kind)} until {SheetText.Date(last)}"
            : SheetText.Name(dates.Kind);

    private static string Standing(ReadingTrend trend) => trend.IsTrend ? "a trend" : "more than noise, no trend yet";

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
