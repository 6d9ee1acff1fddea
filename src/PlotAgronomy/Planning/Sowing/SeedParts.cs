using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>The parts of the answer on seed (tests, dates, rate), each given, not needed or open.</summary>
internal static class SeedParts
{
    /// <summary>What no blend can be made without: the way of sowing, a seed count, and a full rate for that way.</summary>
    internal static IEnumerable<OpenQuestion> BeforeBlending(PlotPlan plan)
    {
        if (plan.SowingMethod is not { } sowing)
        {
            yield return PlantingQuestions.Method();
            yield break;
        }

        foreach (var planned in plan.Kinds)
        {
            var kind = planned.Kind;
            if (planned.Offer.Item.WithOwnCount(kind).SeedCount is null)
            {
                yield return SeedQuestions.Count(kind);
            }

            if (kind.Rates?.For(sowing) is null && planned.OwnFullRate(sowing) is null)
            {
                yield return SeedQuestions.OtherMethod(kind, sowing);
            }
        }
    }

    /// <summary>Asked of the kinds whose full rate too few publications print for a median, and the owner does not
    /// state.</summary>
    internal static IEnumerable<OpenQuestion> FullRates(PlotPlan plan)
    {
        if (plan.SowingMethod is not { } method)
        {
            return [];
        }

        var few = plan.Kinds.Where(k => IsFromTooFew(k, method)).Select(k => (k.Kind, k.Kind.FullRange(method))).ToList();
        return few.Count == 0 ? [] : [SeedQuestions.FullRates(method, few)];
    }

    /// <summary>The plan with the rate that is counted, or the highest printed one, for every kind that is asked about.</summary>
    internal static PlotPlan? WithFullRates(PlotPlan plan, PrintedEnd end) =>
        plan.SowingMethod is { } method
            ? plan with
            {
                Kinds =
                [
                    .. plan.Kinds.Select(k =>
                        IsFromTooFew(k, method) && k.Kind.FullRange(method) is var printed
                            ? k with
                            {
                                FullRate = end == PrintedEnd.Lowest ? printed.Full : printed.High,
                            }
                            : k
                    ),
                ],
            }
            : null;

    private static bool IsFromTooFew(PlannedKind kind, SowingMethod method) =>
        kind.OwnFullRate(method) is null && kind.Kind.Rates?.For(method) is { IsFromTooFew: true };

    /// <summary>Whether a lot is treated and would lie on the surface, where animals eat it: on ground that is not worked, or
    /// pressed in because the seed is small.</summary>
    internal static bool IsTreatedOnSurface(PlotPlan plan, SeedLot lot) =>
        lot.IsTreated
        && plan.Method != PlantingMethod.Drilled
        && (plan.Method != PlantingMethod.TilledAndPacked || IsPressedIn(lot.Kind));

    /// <summary>Whether the seed is too small to be covered: it is pressed into the surface and lies there.</summary>
    private static bool IsPressedIn(CropKind kind) => kind.Depth is not { } depth || !SeedPasses.IsCovered(depth.Deepest.Inches);

    internal static Answer<CommonDates> Dates(Blend blend, BlendFit fit)
    {
        if (fit.Dates is { } dates)
        {
            return Answers.Given(dates);
        }

        var region = SeedQuestions.Region();
        return Answers.Open(() => [region], () => region.CasesOf(r => CommonDates.For(blend, r)));
    }

    internal static Answer<TestAge> Test(PlotPlan plan, SeedLot lot)
    {
        if (plan.PlantingDate is not { } planting)
        {
            return Answers.Open<TestAge>(() => [PlantingQuestions.Day()]);
        }

        if (lot.TestMonth is not null)
        {
            var age = TestAge.For(lot, SoldIn(plan), planting);
            return Answers.Given(age, () => age.Findings);
        }

        var month = SeedQuestions.TestMonth(lot, planting);
        return Answers.Open(() => [month], () => month.CasesOf(m => TestAge.If(lot, m, SoldIn(plan), planting)));
    }

    /// <summary>The state whose seed law is asked; null, for the federal one, where no rule of it is known.</summary>
    private static Place? SoldIn(PlotPlan plan) => plan.Plot.Place is { } place && TestDateRule.IsKnownFor(place) ? place : null;

    internal static Answer<RateCheck> RateCheck(IReadOnlyList<BlendPart> parts)
    {
        if (parts.Count > 1)
        {
            return Answers.NoneNeeded<RateCheck>();
        }

        var check = Seeds.RateCheck.Against(parts[0].Kind, parts[0].LiveRate);
        return Answers.Given(check, () => check.Findings);
    }
}
