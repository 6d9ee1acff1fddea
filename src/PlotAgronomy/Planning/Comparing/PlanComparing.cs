using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>What a plan leaves open, side by side: recommendation systems, lime methods, lots of seed, a store's blend against
/// plain lots.</summary>
public static class PlanComparing
{
    /// <summary>Takes a plan's report through every recommendation system that accepts it.</summary>
    /// <param name="plan">Plan. The system it names is asked by name.</param>
    /// <param name="takenAs">Crop row to ask every system for; null asks each for the rows that the plan's kinds are taken
    /// as.</param>
    /// <param name="includeFromMemory">Whether to ask the systems whose numbers are from memory as well; each then says
    /// so.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Unknown row.</exception>
    public static SystemsForPlan CompareSystems(this PlotPlan plan, CropRow? takenAs = null, bool includeFromMemory = false)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<AskedKinds> asked = takenAs is { } row
            ? [AskedKinds.Of(Guard.Defined(row, nameof(takenAs)), plan)]
            : AskedKinds.Of(plan);
        return new SystemsForPlan
        {
            Plan = plan,
            AskedRow = takenAs,
            Kinds = [.. asked.Select(a => SystemsForKinds.Ask(plan, a, includeFromMemory))],
        };
    }

    /// <summary>Takes a plan's soil through every lime method that accepts its reading, in one material at one depth.</summary>
    /// <param name="plan">Plan. The method it names is asked by name.</param>
    /// <param name="targetPh">pH aimed at, from 4 to 9; null takes the plan's own.</param>
    /// <param name="includeFromMemory">Whether to ask the methods whose numbers are from memory as well; each then says
    /// so.</param>
    /// <param name="material">Common material, such as one of the plan's; null takes pure carbonate powder.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A pH outside its range.</exception>
    public static LimeMethodsForPlan CompareLime(
        this PlotPlan plan,
        double? targetPh = null,
        bool includeFromMemory = false,
        LimingMaterial? material = null
    )
    {
        ArgumentNullException.ThrowIfNull(plan);
        double? asked = targetPh is { } ph ? LimeLimits.TargetPh(ph, nameof(targetPh)) : null;
        var (target, aimed) = LimeAim.Of(plan, GrownKinds.Of(plan));
        double wanted = aimed ?? LimingConstants.All["fallback-target"];
        var soil = plan.Soil;
        var comparison = LimeMethodComparison.For(
            soil,
            asked ?? wanted,
            plan.TillageDepth ?? plan.LimeMethod?.Depth ?? Length.FromInches(LimingConstants.All["furrow-slice"]),
            material,
            m => includeFromMemory || m.Status != DataStatus.Memory || m == plan.LimeMethod
        );
        return new LimeMethodsForPlan
        {
            Plan = plan,
            Target = target,
            AskedPh = asked,
            Comparison = comparison,
            KeptBack = [.. LimeMethod.Accepting(soil, includeFromMemory: true).Except(comparison.Answers.Select(a => a.Method))],
        };
    }

    /// <summary>Ranks the lots of every kind that the plan offers in several, by the cost of the same living stand.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="InvalidOperationException">No kind is offered in several lots
    /// (<see cref="PlotPlan.KindsInSeveralLots"/>).</exception>
    /// <remarks>The stand is the share of a full stand that the plan grows, or a full one of a kind it does not grow.</remarks>
    public static SeedLotsForPlan CompareSeedLots(this PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var kinds = plan.KindsInSeveralLots;
        if (kinds.IsEmpty)
        {
            throw new InvalidOperationException("The plan offers no kind in more than one lot.");
        }

        ImmutableArray<CropKind> withoutRate = [.. kinds.Where(k => k.Rates?.For(plan.ComparedMethod) is null)];
        return new SeedLotsForPlan
        {
            Plan = plan,
            Kinds = [.. kinds.Except(withoutRate).Select(k => new SeedLotsOfKind(plan, Ranked(plan, k)))],
            WithoutRate = withoutRate,
        };
    }

    /// <summary>Sets each of the plan's store blends against plain lots.</summary>
    /// <param name="plan">Plan.</param>
    /// <returns>The answers.</returns>
    /// <exception cref="InvalidOperationException">The plan offers none (<see cref="PlotPlan.StoreBlends"/>).</exception>
    public static StoreBlendsForPlan CompareStoreBlends(this PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.StoreBlends.IsEmpty
            ? throw new InvalidOperationException("The plan offers no store blend.")
            : new StoreBlendsForPlan
            {
                Plan = plan,
                Blends =
                [
                    .. plan.StoreBlends.Select(bag => new StoreBlendForPlan(
                        plan,
                        BagOrPlainSeed.Compare(bag, plan.ComparedMethod, plan.SeedOffers)
                    )),
                ],
            };
    }

    /// <summary>Counts how much ground what is there will do, what runs out first, and what is short for the plot.</summary>
    /// <param name="plan">Plan whose offers say how much there is (<see cref="Offer{T}.Available"/>).</param>
    /// <returns>The answer; not needed where no offer says so, open where seed cannot be weighed.</returns>
    public static Answer<UseUp> UseUp(this PlotPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Planning.UseUp.For(plan);
    }

    private static SeedLotComparison Ranked(PlotPlan plan, CropKind kind)
    {
        double share = plan.Kinds.FirstOrDefault(k => k.Kind.Id == kind.Id)?.Share.ShareOfFullStand ?? 1;
        return SeedLotComparison.Rank(
            [.. plan.SeedOffers.Where(o => o.Item.Kind.Id == kind.Id)],
            kind.FullRange(plan.ComparedMethod).Full * share
        );
    }
}
