using System.Collections.Immutable;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>What a plan meant, as entries: the report it rests on, and what the plot was in need of.</summary>
internal static class PlannedNeed
{
    /// <summary>From which day on what is spread counts for this season; the first of all days without one of planting.</summary>
    internal static DateOnly SeasonOf(PlotPlan plan)
    {
        DateOnly?[] days = [plan.LimeDate, plan.PlantingDate?.AddDays(-(int)PlanningConstants.All["need-days-before"])];
        return days.Min() ?? DateOnly.MinValue;
    }

    internal static ImmutableArray<BookEntry> Of(PlotAnswers answers, PlotBook book)
    {
        var plan = answers.Plan;
        return [.. Report(plan, book), .. Lime(answers, book), .. Nutrients(answers, book)];
    }

    private static IEnumerable<BookEntry> Report(PlotPlan plan, PlotBook book) =>
        plan is { Report: { PrintsReadings: true, SampledOn: { } day } report }
        && !book.Of<SoilReportEntry>(plan.Plot.Name).Any(e => e.On == day)
            ?
            [
                new SoilReportEntry
                {
                    On = day,
                    Plot = plan.Plot.Name,
                    Report = report,
                },
            ]
            : [];

    /// <summary>Lime is needed from the day of the sample on: what was spread before it, the sample has seen.</summary>
    private static IEnumerable<BookEntry> Lime(PlotAnswers answers, PlotBook book)
    {
        var plan = answers.Plan;
        var lime = answers.Lime.Told;
        if (plan.PlantingDate is null || (lime.Need ?? lime.Rate.OrNull()) is not { } whole)
        {
            yield break;
        }

        var rate = LimePlacing.AtTreatedDepth(plan, whole);
        var from = plan.ReportOrNone.SampledOn ?? SeasonOf(plan);
        var stands = book.Of<NeedEntry>(plan.Plot.Name).LastOrDefault(n => n.Lime is not null && n.On == from)?.Lime;
        if (stands is null || !Tolerance.AreEqual(stands.OfBasis.PoundsPerAcre, rate.OfBasis.PoundsPerAcre))
        {
            yield return new NeedEntry
            {
                On = from,
                Plot = plan.Plot.Name,
                Lime = rate,
            };
        }
    }

    private static IEnumerable<BookEntry> Nutrients(PlotAnswers answers, PlotBook book)
    {
        var plan = answers.Plan;
        if (plan.PlantingDate is null || answers.Need.OrNull() is not { } need)
        {
            yield break;
        }

        var from = plan.PlantingDate.Value.AddDays(-(int)PlanningConstants.All["need-days-before"]);
        var entry = new NeedEntry
        {
            On = from,
            Plot = plan.Plot.Name,
            Nitrogen = need.Find(PlantNutrient.Nitrogen)?.AtLeast,
            Phosphate = need.Find(PlantNutrient.Phosphate)?.AtLeast,
            Potash = need.Find(PlantNutrient.Potash)?.AtLeast,
        };
        if (entry is { Nitrogen: null, Phosphate: null, Potash: null })
        {
            yield break;
        }

        var stands = book.Of<NeedEntry>(plan.Plot.Name).LastOrDefault(n => n.Lime is null && n.On == from);
        if (
            stands is null
            || (stands.Nitrogen, stands.Phosphate, stands.Potash) != (entry.Nitrogen, entry.Phosphate, entry.Potash)
        )
        {
            yield return entry;
        }
    }
}
