using PlotAgronomy.Seeds;

namespace PlotAgronomy.Calendar;

/// <summary>What holds for a season.</summary>
internal static class SeasonConditions
{
    internal static HashSet<SeasonCondition> Of(SeasonRequest request)
    {
        var holding = new HashSet<SeasonCondition>();
        Add(OfPlot(request));
        Add(OfKinds(request));
        Add(OfLime(request));
        Add(OfGround(request.Ground));
        Add(OfWeeds(request));
        return holding;

        void Add((SeasonCondition Condition, bool Holds)[] conditions)
        {
            foreach (var (condition, holds) in conditions)
            {
                if (holds)
                {
                    holding.Add(condition);
                }
            }
        }
    }

    private static (SeasonCondition, bool)[] OfPlot(SeasonRequest request) =>
        [
            (SeasonCondition.Sowing, request.IsSowing),
            (SeasonCondition.Standing, request.IsStanding),
            (SeasonCondition.NotStanding, !request.IsStanding),
            (SeasonCondition.NothingSown, !request.IsStanding && !request.IsSowing),
            (SeasonCondition.Grown, request.IsStanding || request.IsSowing),
            (SeasonCondition.SampleMissing, request.SampledOn is null && !request.Chosen.IsTested),
            (SeasonCondition.Retest, request.NeedsRetest),
            (SeasonCondition.LateTest, request.Chosen.LateTestDecides is not null),
            (SeasonCondition.Fertilizer, request.NeedsFertilizer),
            (SeasonCondition.SpreadWithoutSeed, !request.IsSowing && (request.NeedsFertilizer || request.NeedsLime)),
            (SeasonCondition.CoverKnown, request.Chosen.CoverInstead is not null),
            (SeasonCondition.Dose, !request.NitrogenDoses.IsEmpty),
            (SeasonCondition.NextSample, request.NextSampleOn is not null || request.Chosen.NextSample is not null),
            (SeasonCondition.NoNextSample, request.NextSampleOn is null && request.Chosen.NextSample is null),
        ];

    /// <summary>Without a day nobody knows whether a sowing is one of spring or of fall: then it may be either.</summary>
    private static (SeasonCondition, bool)[] OfKinds(SeasonRequest request)
    {
        bool? isFall = request.IsFallSowing;
        var kinds = request.Kinds;
        bool hasLegume = kinds.Any(k => k.IsLegume);
        bool isLasting = kinds.Any(k => k.IsLegume && k.LifeCycle != LifeCycle.Annual);
        return
        [
            (SeasonCondition.Legume, hasLegume),
            (SeasonCondition.NotLegume, !hasLegume),
            (SeasonCondition.LastingLegume, isLasting),
            (SeasonCondition.OtherStand, !isLasting),
            (SeasonCondition.Grass, kinds.Any(k => k.Group == FunctionalGroup.Grass)),
            (SeasonCondition.Forb, kinds.Any(k => k.Group == FunctionalGroup.Forb)),
            (SeasonCondition.Thin, request.Chosen.IsThin),
            (SeasonCondition.NotThin, !request.Chosen.IsThin),
            (SeasonCondition.WinterGrain, kinds.Any(k => k.Group == FunctionalGroup.Cereal && !k.StopsAtFrost)),
            (SeasonCondition.SpringSown, isFall != true),
            (SeasonCondition.FallSown, isFall != false),
            (SeasonCondition.CoveredSeed, request.Passes.Any(p => p.IsCovered)),
            (SeasonCondition.PressedSeed, request.Passes.Any(p => !p.IsCovered)),
        ];
    }

    private static (SeasonCondition, bool)[] OfLime(SeasonRequest request)
    {
        bool isLate = request.LimeOn > request.SowOn;
        return
        [
            (SeasonCondition.Lime, request.NeedsLime),
            (SeasonCondition.LimeWorkedIn, request.LimeIsWorkedIn),
            (SeasonCondition.LimeOnSurface, !request.LimeIsWorkedIn),
            (SeasonCondition.LimeBeforeSeed, !isLate || !request.IsSowing),
            (SeasonCondition.LimeAfterSeed, isLate && request.IsSowing),
            (SeasonCondition.LimeRateAsked, request.Chosen.IsLimeRateAsked),
            (SeasonCondition.LaterDressing, !request.LaterDressings.IsEmpty),
        ];
    }

    /// <summary>While nothing is settled, what stands there is ended as for worked ground.</summary>
    private static (SeasonCondition, bool)[] OfGround(GroundWork? ground)
    {
        bool isLaidOver = ground is GroundWork.RolledDown or GroundWork.MownDown;
        bool isWorked = ground is null or GroundWork.Tilled;
        return
        [
            (SeasonCondition.Tilled, ground == GroundWork.Tilled),
            (SeasonCondition.NotTilled, isLaidOver || ground == GroundWork.Drilled),
            (SeasonCondition.NotSettled, ground is null),
            (SeasonCondition.Worked, isWorked),
            (SeasonCondition.NotWorked, !isWorked),
            (SeasonCondition.Drilled, ground == GroundWork.Drilled),
            (SeasonCondition.SpreadSeed, isWorked || isLaidOver),
            (SeasonCondition.Rolled, ground == GroundWork.RolledDown),
            (SeasonCondition.Mown, ground == GroundWork.MownDown),
            (SeasonCondition.FrostSeeded, ground == GroundWork.FrostSeeded),
            (SeasonCondition.NotFrostSeeded, ground != GroundWork.FrostSeeded),
            (SeasonCondition.KillOverSeed, isLaidOver),
            (SeasonCondition.KillBefore, !isLaidOver),
        ];
    }

    /// <summary>A way that the owner states goes before what is done for what stands there; brush is cleared in any
    /// case. Legumes alone are frost-seeded into a sward that is kept short.</summary>
    private static (SeasonCondition, bool)[] OfWeeds(SeasonRequest request)
    {
        var weeds = request.Weeds;
        bool isOpen = weeds is null;
        bool isKept = request.Ground == GroundWork.FrostSeeded && request.Kinds.All(k => k.IsLegume);
        bool isCrop = request.Cover is GroundCover.SmallGrain or GroundCover.SmotherCrop;
        bool isCleared = request.Ground is not GroundWork.FrostSeeded && (!isCrop || request.Ground == GroundWork.Drilled);
        return
        [
            (SeasonCondition.StandsWeeds, isOpen && request.Cover == GroundCover.Weeds),
            (SeasonCondition.StandsSod, isOpen && request.Cover == GroundCover.GrassSod),
            (SeasonCondition.StandsBrush, request.Cover == GroundCover.Brush),
            (SeasonCondition.SwardKept, isKept),
            (SeasonCondition.SwardEnded, !isKept),
            (SeasonCondition.StandsGrowth, isOpen && request.Cover != GroundCover.BareGround),
            (SeasonCondition.StandsCrop, isCrop && SmotherDates.Of(request) is null),
            (
                SeasonCondition.WeedsNotStated,
                isOpen
                    && isCleared
                    && request.Cover is (null or GroundCover.LegumeStand or GroundCover.SmallGrain or GroundCover.SmotherCrop)
            ),
            (SeasonCondition.WeedsTilled, weeds?.Way == WeedWay.RepeatedTillage),
            (SeasonCondition.WeedsSmothered, weeds is { Way: WeedWay.SmotherCrop, SmotherKind: not null }),
            (SeasonCondition.SmotherToSow, !request.SmotherStands),
            (SeasonCondition.WeedsSprayed, weeds?.Way == WeedWay.Herbicide),
            (SeasonCondition.WeedsOwnWay, weeds is { Way: WeedWay.OwnWay, Words: not null }),
        ];
    }
}
