using System.Collections.Immutable;
using System.Numerics;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Turns request and lots into whole steps for <see cref="CheapestShares"/>, and its answer into a recipe.</summary>
internal sealed class RecipeSearch
{
    private readonly RecipeRequest request;
    private readonly ImmutableArray<BlendComponent> offers;
    private readonly ImmutableArray<ExcludedLot> excluded;
    private readonly Dictionary<string, int> families;
    private readonly bool standingMustLiveOn;
    private RecipeWork work = new();
    private bool isStopped;

    internal RecipeSearch(RecipeRequest request, IReadOnlyList<Offer<SeedLot>> lots)
    {
        ArgumentNullException.ThrowIfNull(request);
        Guard.NotEmpty(lots);
        this.request = request;
        if (request.TotalFrom > request.TotalTo || request.SmallestShare > request.LargestShare)
        {
            throw new ArgumentException("The least total or share is above the greatest.", nameof(request));
        }

        (offers, excluded) = RecipeOffers.Sort(request, lots);
        families = offers
            .Select(o => o.Kind.Family)
            .Distinct()
            .Order(StringComparer.Ordinal)
            .Select((f, i) => (f, i))
            .ToDictionary(x => x.f, x => x.i);
        standingMustLiveOn = request.Standing.Any(s => s.ShareOfFullStand > 0 && s.Kind.LifeCycle != LifeCycle.Annual);
    }

    /// <summary>Gets the lots that are not considered, with the reason.</summary>
    internal ImmutableArray<ExcludedLot> Excluded => excluded;

    /// <summary>The cheapest recipe that covers the seasons wanted, budget aside; null when none does.</summary>
    internal Recipe? Cheapest(out bool isUndecided)
    {
        work = new RecipeWork();
        isStopped = false;
        var found = Cheapest(request.Seasons.Aggregate(0, (mask, s) => mask | (1 << (int)Guard.Defined(s))));
        isUndecided = isStopped && found is null;
        return found;
    }

    /// <summary>For each number of seasons the cheapest over all choices of that many; a set of seasons never costs less than a
    /// part of it, which spares most of the searches.</summary>
    internal ImmutableArray<SeasonCountRecipe> BySeasons()
    {
        work = new RecipeWork();
        var costs = new Dictionary<int, decimal>();
        var rows = ImmutableArray.CreateBuilder<SeasonCountRecipe>();
        for (int count = 0; count <= SeasonSteps.Seasons; count++)
        {
            Recipe? best = null;
            isStopped = false;
            var masks = Enumerable
                .Range(0, 1 << SeasonSteps.Seasons)
                .Where(m => BitOperations.PopCount((uint)m) == count)
                .Select(m =>
                    (
                        Mask: m,
                        AtLeast: PartsOf(m).Select(p => costs.GetValueOrDefault(p, decimal.MaxValue)).DefaultIfEmpty(0).Max()
                    )
                )
                .OrderBy(m => m.AtLeast)
                .ThenBy(m => m.Mask);
            foreach (var (mask, atLeast) in masks)
            {
                costs[mask] = atLeast;
                if (atLeast == decimal.MaxValue || (best is not null && atLeast >= best.Cost))
                {
                    continue;
                }

                var recipe = Cheapest(mask);
                costs[mask] =
                    recipe is { IsProvenCheapest: false } || (recipe is null && isStopped)
                        ? atLeast
                        : recipe?.Cost ?? decimal.MaxValue;
                best = recipe is not null && (best is null || recipe.Cost < best.Cost) ? recipe : best;
            }

            rows.Add(
                new SeasonCountRecipe
                {
                    Seasons = count,
                    Recipe = best,
                    IsUndecided = isStopped && best is null,
                }
            );
        }

        return rows.ToImmutable();
    }

    private static IEnumerable<int> PartsOf(int mask) =>
        Enumerable.Range(0, SeasonSteps.Seasons).Where(s => (mask & (1 << s)) != 0).Select(s => mask & ~(1 << s));

    /// <summary>The cheaper of two searches: with kinds that must live on under the caps of groups, and without such kinds free
    /// of them.</summary>
    private Recipe? Cheapest(int seasons)
    {
        var capped = Search(seasons, [.. offers], true);
        var free = standingMustLiveOn ? null : Search(seasons, [.. offers.Where(o => !o.MustLiveOn)], false);
        return capped is null ? free
            : free is null || capped.Cost <= free.Cost ? capped
            : free;
    }

    private Recipe? Search(int seasons, BlendComponent[] components, bool capped)
    {
        if (components.Length == 0)
        {
            return null;
        }

        var wholeGroup = CrowdingGroup.All.Single(c => c.IsWholeGroup);
        components =
        [
            .. components
                .OrderBy(c => wholeGroup.Holds(c.Kind))
                .ThenBy(c => families[c.Kind.Family])
                .ThenBy(CostOfFullStand)
                .ThenBy(c => c.Kind.Id, StringComparer.Ordinal),
        ];
        double standing = request.Standing.Sum(s => s.ShareOfFullStand);
        double standingInGroup = request.Standing.Where(s => wholeGroup.Holds(s.Kind)).Sum(s => s.ShareOfFullStand);
        var limits = new CheapestShares.Limits(
            StepsUp(request.TotalFrom - standing),
            StepsDown(request.TotalTo - standing),
            Lacking(seasons),
            request.MinimumKinds,
            request.MinimumFamilies,
            capped ? StepsDown(wholeGroup.Cap - standingInGroup) : int.MaxValue
        );
        var found = CheapestShares.Find([.. components.Select(c => CandidateOf(c, capped, wholeGroup))], limits, work);
        isStopped |= !found.IsProven;
        return found.Steps is not { } steps || steps.All(s => s == 0)
            ? null
            : RecipeOf([.. components.Zip(steps).Where(x => x.Second > 0).Select(x => (x.First, x.Second * request.Step))]);
    }

    private CheapestShares.Candidate CandidateOf(BlendComponent component, bool capped, CrowdingGroup wholeGroup)
    {
        double largest = request.LargestShare;
        if (capped)
        {
            foreach (var cap in CrowdingGroup.All.Where(c => !c.IsWholeGroup && c.Holds(component.Kind)))
            {
                largest = Math.Min(
                    largest,
                    cap.Cap - request.Standing.Where(s => cap.Holds(s.Kind)).Sum(s => s.ShareOfFullStand)
                );
            }
        }

        return new(
            StepsUp(request.SmallestShare),
            StepsDown(largest),
            CostOfFullStand(component) * request.Step,
            SeasonFeeding.Mask(component.Kind),
            families[component.Kind.Family],
            capped && wholeGroup.Holds(component.Kind)
        );
    }

    private SeasonSteps Lacking(int seasons)
    {
        Span<int> lacking = stackalloc int[SeasonSteps.Seasons];
        foreach (var season in Enum.GetValues<SeasonOfUse>().Where(s => (seasons & (1 << (int)s)) != 0))
        {
            lacking[(int)season] = StepsUp(
                request.ShareThatCovers
                    - request.Standing.Where(s => SeasonFeeding.Feeds(s.Kind, season)).Sum(s => s.ShareOfFullStand)
            );
        }

        return SeasonSteps.Of(lacking);
    }

    /// <summary>Cost for the plot of one full stand of the lot.</summary>
    private double CostOfFullStand(BlendComponent component)
    {
        double acres = request.Area.Acres;
        return SeedMath.BulkPoundsPerAcre(component.FullRate.PoundsPerAcre, component.PureLiveFraction)
            * (double)component.Offer!.PricePerPound
            * acres;
    }

    private int StepsUp(double share) => Math.Max(0, (int)Tolerance.Ceiling(share / request.Step));

    private int StepsDown(double share) => Math.Max(0, (int)Tolerance.Floor(share / request.Step));

    private Recipe RecipeOf((BlendComponent Component, double Share)[] kinds)
    {
        var blend = Blend.FromSharesOfFullStand(kinds);
        var batch = blend.WeighFor(request.Area);
        var coverage = SeasonCoverage.For(blend.KindShares.Concat(request.Standing), request.ShareThatCovers);
        return new Recipe(request)
        {
            IsProvenCheapest = !isStopped,
            Blend = blend,
            Batch = batch,
            Cost = batch.Lines.Sum(l => BlendMath.Cost(l.Component.Offer!.PricePerPound, l.Weight.Pounds)),
            Packages = BagOrder.For(blend, request.Area),
            Coverage = coverage,
        };
    }
}
