using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>What is changed for the next year: the days, the soil, the kinds, and what grew there.</summary>
internal static class PlanChanges
{
    internal static IEnumerable<PlanChange> Of(PlotPlan last, PlotBook book, DateOnly on)
    {
        var next = NextYear.Of(book, last.Plot.Name, last.Plot.Area, on);
        return
        [
            .. Days(last, on),
            .. SoilChanges.Of(last, book, on),
            .. ForerunnerChanges.Of(last, book, on),
            .. KindChanges.Of(last, next),
            .. Told(next, RankingWords.Told(KindRanking.UpTo(book, RankedMeasure.Emergence, on), last.Kinds.Select(k => k.Kind))),
        ];
    }

    /// <summary>The same days in the year after; the 29th of February becomes the 28th.</summary>
    private static IEnumerable<PlanChange> Days(PlotPlan last, DateOnly on)
    {
        int years = on.Year + 1 - last.PlantingDate!.Value.Year;
        var planting = last.PlantingDate.Value.AddYears(years);
        yield return new()
        {
            What = "day of planting",
            From = FieldWriter.Of(last.PlantingDate.Value),
            To = FieldWriter.Of(planting),
            Reason = "The same day of the next year; move it with the weather.",
            Entries = [],
            Apply = plan => plan with { PlantingDate = planting },
        };
        if (last.LimeDate is { } limed)
        {
            yield return new()
            {
                What = "day of liming",
                From = FieldWriter.Of(limed),
                To = FieldWriter.Of(limed.AddYears(years)),
                Reason = "The same day of the next year.",
                Entries = [],
                Apply = plan => plan with { LimeDate = limed.AddYears(years) },
            };
        }
    }

    /// <summary>What the book says and no plan can be changed by: told, so that nothing is passed over in silence.</summary>
    private static IEnumerable<PlanChange> Told(NextYear next, string? more)
    {
        var asked = next.Suggestions.Select(s => s.Why).ToHashSet();
        return next
            .Findings.Where(f => !asked.Contains(f))
            .Select(f => f.Text)
            .Concat(next.Questions.Select(q => q.Text))
            .Concat(new[] { more }.OfType<string>())
            .Select(text => new PlanChange
            {
                What = "To know",
                From = "",
                To = text,
                Reason = text,
                Entries = [],
            });
    }
}
