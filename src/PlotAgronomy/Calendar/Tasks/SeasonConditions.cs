using PlotAgronomy.Seeds;

namespace PlotAgronomy.Calendar;

/// <summary>What holds for a season.</summary>
internal static class SeasonConditions
{
    internal static HashSet<SeasonCondition> Of(SeasonRequest request) =>
        [.. All(request).Where(c => c.Holds).Select(c => c.Condition)];

    private static IEnumerable<(SeasonCondition Condition, bool Holds)> All(SeasonRequest request)
    {
        bool isFall = request.SowOn.DayOfYear >= CalendarConstants.Days("fall-from");
        var kinds = request.Kinds;
        return
        [
            (SeasonCondition.Sowing, !request.IsStanding),
            (SeasonCondition.Standing, request.IsStanding),
            (SeasonCondition.SampleMissing, request.SampledOn is null),
            (SeasonCondition.Lime, request.NeedsLime),
            (SeasonCondition.LimeWorkedIn, request.LimeIsWorkedIn),
            (SeasonCondition.LimeOnSurface, !request.LimeIsWorkedIn),
            (SeasonCondition.LaterDressing, !request.LaterDressings.IsEmpty),
            (SeasonCondition.Retest, request.NeedsRetest),
            (SeasonCondition.Fertilizer, request.NeedsFertilizer),
            (SeasonCondition.Legume, kinds.Any(k => k.IsLegume)),
            (SeasonCondition.LastingLegume, kinds.Any(k => k.IsLegume && k.LifeCycle != LifeCycle.Annual)),
            (SeasonCondition.WinterGrain, kinds.Any(k => k.Group == FunctionalGroup.Cereal && !k.StopsAtFrost)),
            (SeasonCondition.SpringSown, !isFall),
            (SeasonCondition.FallSown, isFall),
            (SeasonCondition.CoveredSeed, request.Passes.Any(p => p.IsCovered)),
            (SeasonCondition.PressedSeed, request.Passes.Any(p => !p.IsCovered)),
            (SeasonCondition.Dose, !request.NitrogenDoses.IsEmpty),
            (SeasonCondition.NextSample, request.NextSampleOn is not null),
            (SeasonCondition.NoNextSample, request.NextSampleOn is null),
            .. OfGround(request.Ground),
            .. OfWeeds(request),
        ];
    }

    private static IEnumerable<(SeasonCondition, bool)> OfGround(GroundWork ground) =>
        [
            (SeasonCondition.Tilled, ground == GroundWork.Tilled),
            (SeasonCondition.NotTilled, ground is GroundWork.RolledDown or GroundWork.MownDown or GroundWork.Drilled),
            (SeasonCondition.Rolled, ground == GroundWork.RolledDown),
            (SeasonCondition.Mown, ground == GroundWork.MownDown),
            (SeasonCondition.FrostSeeded, ground == GroundWork.FrostSeeded),
            (SeasonCondition.NotFrostSeeded, ground != GroundWork.FrostSeeded),
            (SeasonCondition.KillOverSeed, ground is GroundWork.RolledDown or GroundWork.MownDown),
            (SeasonCondition.KillBefore, ground is not (GroundWork.RolledDown or GroundWork.MownDown)),
        ];

    /// <summary>Into a stand on frozen ground nothing is cleared away first.</summary>
    private static IEnumerable<(SeasonCondition, bool)> OfWeeds(SeasonRequest request) =>
        [
            (SeasonCondition.WeedsNotStated, request.Weeds is null && request.Ground != GroundWork.FrostSeeded),
            (SeasonCondition.WeedsTilled, request.Weeds?.Way == WeedWay.RepeatedTillage),
            (SeasonCondition.WeedsSmothered, request.Weeds?.Way == WeedWay.SmotherCrop && request.Weeds.SmotherKind is not null),
            (SeasonCondition.SmotherToSow, !request.SmotherStands),
            (SeasonCondition.WeedsSprayed, request.Weeds?.Way == WeedWay.Herbicide),
            (SeasonCondition.WeedsOwnWay, request.Weeds is { Way: WeedWay.OwnWay, Words: not null }),
        ];
}
