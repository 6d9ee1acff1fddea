using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Joins what the rooms answered to a season: the one list of the work of a plan, with or without days.</summary>
internal static class SeasonSolver
{
    /// <summary>Given for every plan that has any work; none needed where there is none.</summary>
    internal static Answer<SeasonCalendar> Solve(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var dates = TimingSolver.Dates(plan);
        var passes = SeasonPasses.Of(answers);
        var calendar = SeasonCalendar.Of(Request(answers, passes));
        if (calendar.Value.Tasks.IsEmpty)
        {
            return Answers.NoneNeeded<SeasonCalendar>();
        }

        return Answers.Given(
            calendar.Value,
            () => Finding.InOrder([.. calendar.Findings, .. dates.Findings]),
            () => [.. calendar.Questions.Concat(dates.Questions).Distinct()]
        );
    }

    internal static GroundWork? Ground(PlantingMethod? method) =>
        method switch
        {
            PlantingMethod.TilledAndPacked => GroundWork.Tilled,
            PlantingMethod.BroadcastThenRolled => GroundWork.RolledDown,
            PlantingMethod.BroadcastThenMown => GroundWork.MownDown,
            PlantingMethod.FrostSeeded => GroundWork.FrostSeeded,
            PlantingMethod.Drilled => GroundWork.Drilled,
            _ => null,
        };

    private static SeasonRequest Request(PlotAnswers answers, ImmutableArray<SeasonPass> passes)
    {
        var plan = answers.Plan;
        var lime = answers.Lime.Told;
        bool isStanding = GrownKinds.IsUpkeep(plan);
        var sown = isStanding ? null : Dates(plan, passes);
        bool isFertilized = answers.Fertilizer.TryGetPart(out var fertilizer) && fertilizer.IsNeeded;
        return new()
        {
            SowOn = plan.PlantingDate,
            IsStanding = isStanding,
            SowFrom = sown?.From,
            SowTo = sown is null ? null : sown.To ?? sown.SowOn.AddDays(CalendarConstants.Days("wait-for-rain")),
            Passes = passes,
            Ground = Ground(plan.Method),
            Cover = isStanding ? null : plan.Plot.Cover,
            SampledOn = plan.ReportOrNone.SampledOn,
            NeedsLime = lime.Rate.OrNull() is { } rate && rate.OfBasis > ApplicationRate.Zero,
            LimeIsWorkedIn = LimePlacing.Of(plan) == LimePlacement.WorkedIn,
            LimeOn = plan.LimeDate,
            LaterDressings = Later(lime.Order.OrNull(), plan.LimeDate),
            NeedsRetest = !ChoicesForSeason.Tested(answers).IsEmpty,
            NeedsFertilizer = isFertilized && (fertilizer!.Purchase.OrNull() is null || !fertilizer.AtSowing.IsEmpty),
            NitrogenDoses = BoughtDoses.Of(fertilizer),
            Weeds = plan.Season?.Weeds ?? Standing(plan.Plot),
            SmotherStands = plan.Season?.Weeds is null,
            KillingFrost = Frost(plan),
            NextSampleOn = lime.Expected?.RetestOn,
            Chosen = ChoicesForSeason.Of(answers, fertilizer),
        };
    }

    /// <summary>The dates of what is sown; null while the day is not set, and where nothing is.</summary>
    private static SowingDates? Dates(PlotPlan plan, ImmutableArray<SeasonPass> passes) =>
        plan.PlantingDate is { } day && !passes.IsEmpty
            ? SowingDates.Of([.. passes.SelectMany(p => p.Kinds)], day, plan.Plot.PlantingRegion)
            : null;

    /// <summary>An early freeze of the year of the plan.</summary>
    private static DateOnly? Frost(PlotPlan plan) =>
        plan.PlantingDate is { } day && TimingSolver.Frost(plan).OrNull() is { } frost && !GrownKinds.Of(plan).IsEmpty
            ? KindDates.Of(GrownKinds.Of(plan)[0].Kind, day, null, frost).EarlyFrost
            : null;

    /// <summary>A smother crop that stands on the plot is the way weeds are got rid of.</summary>
    private static WeedControl? Standing(Plot plot) =>
        plot is { Cover: GroundCover.SmotherCrop, CoverKind: { } smother }
            ? new() { Way = WeedWay.SmotherCrop, SmotherKind = smother }
            : null;

    private static ImmutableArray<DateOnly> Later(LimeOrder? order, DateOnly? first) =>
        first is { } on && order is not null
            ? [.. order.Dressings.Where(d => d.MonthsAfterFirst > 0).Select(d => d.On ?? on.AddMonths(d.MonthsAfterFirst))]
            : [];
}
