using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Joins what the rooms answered to a season.</summary>
internal static class SeasonSolver
{
    internal static Answer<SeasonCalendar> Solve(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var dates = TimingSolver.Dates(plan);
        if (!dates.TryGet(out var known) || plan.PlantingDate is not { } planting)
        {
            return dates.State == AnswerState.Open
                ? Answers.Open<SeasonCalendar>(() => dates.Questions)
                : Answers.NotAsked<SeasonCalendar>();
        }

        var lime = answers.Lime.Told;
        var calendar = SeasonCalendar.Of(
            new()
            {
                SowOn = planting,
                IsStanding = GrownKinds.IsUpkeep(plan),
                SowFrom = known.From,
                SowTo = known.To,
                Passes = Passes(answers),
                Ground = Ground(plan.Method),
                SampledOn = plan.ReportOrNone.SampledOn,
                NeedsLime = lime.Rate.OrNull() is { } rate && rate.OfBasis > ApplicationRate.Zero,
                LimeIsWorkedIn = LimePlacing.Of(plan) == LimePlacement.WorkedIn,
                LimeOn = plan.LimeDate,
                LaterDressings = Later(lime.Order.OrNull(), plan.LimeDate),
                NeedsRetest = !lime.HoldBack.IsEmpty,
                NeedsFertilizer = answers.Fertilizer.TryGetPart(out var fertilizer) && fertilizer.IsNeeded,
                NitrogenDoses = answers.Need.TryGetPart(out var need) ? need.NitrogenDoses : [],
                Weeds = plan.Season?.Weeds ?? Standing(plan.Plot),
                SmotherStands = plan.Season?.Weeds is null,
                KillingFrost = known.Kinds[0].EarlyFrost,
                NextSampleOn = lime.Expected?.RetestOn,
            }
        );
        return Answers.Given(
            calendar.Value,
            () => Finding.InOrder([.. calendar.Findings, .. dates.Findings]),
            () => [.. calendar.Questions.Concat(dates.Questions).Distinct()]
        );
    }

    internal static GroundWork Ground(PlantingMethod? method) =>
        method switch
        {
            PlantingMethod.BroadcastThenRolled => GroundWork.RolledDown,
            PlantingMethod.BroadcastThenMown => GroundWork.MownDown,
            PlantingMethod.FrostSeeded => GroundWork.FrostSeeded,
            PlantingMethod.Drilled => GroundWork.Drilled,
            _ => GroundWork.Tilled,
        };

    /// <summary>A smother crop that stands on the plot is the way weeds are got rid of.</summary>
    private static WeedControl? Standing(Plot plot) =>
        plot is { Cover: GroundCover.SmotherCrop, CoverKind: { } smother }
            ? new() { Way = WeedWay.SmotherCrop, SmotherKind = smother }
            : null;

    /// <summary>The passes as they are spread; all kinds in one where the seed is open.</summary>
    private static ImmutableArray<SeasonPass> Passes(PlotAnswers answers)
    {
        if (!answers.Spreading.TryGet(out var spreading))
        {
            return [new() { Kinds = TimingSolver.Kinds(answers.Plan) }];
        }

        return
        [
            .. spreading.Passes.Select(p => new SeasonPass
            {
                Kinds = [.. p.Kinds.Select(k => k.Planned.Kind)],
                IsCovered = p.Group.SownBeforeCovering,
            }),
        ];
    }

    private static ImmutableArray<DateOnly> Later(LimeOrder? order, DateOnly? first) =>
        first is { } on && order is not null
            ? [.. order.Dressings.Where(d => d.MonthsAfterFirst > 0).Select(d => d.On ?? on.AddMonths(d.MonthsAfterFirst))]
            : [];
}
