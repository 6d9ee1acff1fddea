using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Records;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Planning;

/// <summary>Kinds that may still be sown where a stand is thin or failed: in time by the printed dates and the frost of the
/// place, and with nothing in the ground against them.</summary>
internal static class StandRemedies
{
    /// <summary>Null where the stand asks for nothing, or was counted too long ago.</summary>
    internal static StandRemedy? For(PlotPlan plan, StandOutcome stand, DateOnly on)
    {
        bool isAsked =
            stand.Verdict is StandVerdict.Thin or StandVerdict.Failed
            && stand.Count.On.AddDays((int)RecordConstants.All["stand-advice-days"]) >= on;
        if (!isAsked)
        {
            return null;
        }

        if (plan.Plot.PlantingRegion is not { } region)
        {
            return new(stand, on, [], IsPlaceKnown: false);
        }

        var today = plan with { PlantingDate = on };
        var frost = TimingSolver.Frost(plan).OrNull();
        ImmutableArray<KindDates> own =
        [
            .. Sown(plan, stand).Select(k => KindDates.Of(k, on, region, frost)).Where(d => Fits(today, d, isOfPlan: true)),
        ];
        return new(stand, on, [.. own, .. Others(today, stand, region, frost, own)], IsPlaceKnown: true);
    }

    /// <summary>The kind that was counted, then those of the plan.</summary>
    private static IEnumerable<CropKind> Sown(PlotPlan plan, StandOutcome stand) =>
        new[] { stand.Count.Kind }.OfType<CropKind>().Concat(plan.Kinds.Select(k => k.Kind)).DistinctBy(k => k.Id);

    /// <summary>Other kinds of the catalog, those of the same group first and the longest in time before the others.</summary>
    private static IEnumerable<KindDates> Others(
        PlotPlan today,
        StandOutcome stand,
        PlantingRegion region,
        FrostDates? frost,
        ImmutableArray<KindDates> own
    ) =>
        KindCatalog
            .Standard.Kinds.Where(k => IsAtHand(today, k))
            .Select(k => KindDates.Of(k, today.PlantingDate!.Value, region, frost))
            .Where(d => Fits(today, d, isOfPlan: false))
            .OrderByDescending(d => d.Kind.Group == stand.Count.Kind?.Group)
            .ThenByDescending(d => d.LastPrinted)
            .Take(Math.Max(0, (int)PlanningConstants.All["most-substitutes"] - own.Length));

    private static bool IsAtHand(PlotPlan plan, CropKind kind) =>
        kind.Rates?.For(plan.ComparedMethod) is not null
        && plan.Kinds.All(p => p.Kind.Id != kind.Id)
        && kind.Hazards.All(h => h.Type != HazardType.NoxiousListing && !GraveHazards.Holds(h));

    /// <summary>A kind of the catalog needs printed dates that hold the day; one of the plan without any goes by frost.</summary>
    private static bool Fits(PlotPlan today, KindDates dates, bool isOfPlan)
    {
        bool isInSeason = dates.IsInSeason ?? (isOfPlan && dates.LastSensible >= dates.SowOn);
        bool isTooLate = dates.StopsAtFrost && dates.LastBeforeFrost < dates.SowOn;
        return isInSeason && !isTooLate && KindJudge.Of(today, dates.Kind).All(o => o.Decision == KindDecision.Sow);
    }
}
