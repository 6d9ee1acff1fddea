using System.Collections.Immutable;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Blends;

/// <summary>Lots and goals spelled out by numbers.</summary>
public sealed class RecipeSketch(int[] numbers)
{
    private static readonly CropKind[] Sowable = [.. KindCatalog.Standard.Kinds.Where(k => k.SeedCount is not null && k.Seasons is not null && k.Rates?.Broadcast is not null)];

    public int[] Numbers => numbers;

    internal Offer<SeedLot>[] Lots => [.. numbers.Select((n, i) => RecipeTests.Lot(Sowable[(n * 13 + i * 5) % Sowable.Length], 0.40m + n % 57 * 0.11m, 70 + n % 30, $"lot {i}"))];

    internal RecipeRequest Goals => new()
    {
        Area = Area.FromAcres(0.25 + numbers[0] % 8 * 0.25),
        Method = SowingMethod.Broadcast,
        Seasons = [.. Enum.GetValues<SeasonOfUse>().Where(s => (numbers.Sum() >> (int)s) % 2 == 1)],
        MinimumKinds = 1 + numbers[0] % 4,
        MinimumFamilies = 1 + numbers[^1] % 3,
        TotalFrom = 0.9 + numbers[^1] % 3 * 0.1,
    };

    public override string ToString() => string.Join(' ', numbers);
}

public static class RecipeArbitraries
{
    public static Arbitrary<RecipeSketch> Sketches() =>
        ArbMap.Default.ArbFor<NonEmptyArray<PositiveInt>>().Convert(
            a => new RecipeSketch([.. a.Get.Concat(a.Get).Concat(a.Get).Take(9).Select((n, i) => n.Get + i * 17)]),
            s => NonEmptyArray<PositiveInt>.NewNonEmptyArray([.. s.Numbers.Take(3).Select(n => (PositiveInt)PositiveInt.NewPositiveInt(n))]));
}

public class RecipeTests
{
    private static readonly Offer<SeedLot>[] Shelf =
    [
        Lot("oats-spring", 0.45m, 90), Lot("winter-wheat", 0.38m, 90), Lot("cereal-rye", 0.42m, 88), Lot("austrian-winter-pea", 1.10m, 85),
        Lot("crimson-clover", 2.10m, 85), Lot("ladino-clover", 4.80m, 82), Lot("medium-red-clover", 3.20m, 88), Lot("chicory", 6.50m, 85),
        Lot("purple-top-turnip", 2.90m, 90), Lot("rape-dwarf-essex", 2.40m, 92), Lot("daikon-radish", 2.75m, 92), Lot("annual-ryegrass", 0.95m, 90),
    ];

    private static RecipeRequest Goals(params SeasonOfUse[] seasons) => new() { Area = Area.FromAcres(0.5), Method = SowingMethod.Broadcast, Seasons = [.. seasons] };

    internal static Offer<SeedLot> Lot(string id, decimal price, double germination) => Lot(SampleBlends.Kind(id), price, germination, id);

    internal static Offer<SeedLot> Lot(CropKind kind, decimal price, double germination, string label) => Offer.ByThePound(new SeedLot
    {
        Label = label,
        Kind = kind,
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(germination)),
    }, price);

    [Fact]
    public void The_shelf_covers_all_five_seasons()
    {
        var proposal = RecipeProposal.Find(Goals(Enum.GetValues<SeasonOfUse>()), Shelf);

        Assert.NotNull(proposal.Recipe);
        Assert.Equal(5, proposal.Recipe.Coverage.Covered);
        AssertMeetsGoals(proposal.Recipe, proposal.Request);
        Assert.Equal(proposal.Recipe.Blend.Parts.Length, proposal.Recipe.Reasons.Length);
    }

    [Fact]
    public void More_seasons_never_cost_less()
    {
        var rows = RecipeProposal.Find(Goals(), Shelf).CheapestBySeasons;

        Assert.Equal(6, rows.Length);
        Assert.All(rows, r => Assert.True(r.Recipe!.Coverage.Covered >= r.Seasons));
        Assert.Equal(rows.Select(r => r.Recipe!.Cost).Order(), rows.Select(r => r.Recipe!.Cost));
    }

    [Fact]
    public void A_budget_just_met_is_met_and_one_cent_less_is_not()
    {
        var goals = Goals(SeasonOfUse.Spring, SeasonOfUse.LateWinter);
        decimal cost = RecipeProposal.Find(goals, Shelf).Recipe!.Cost;
        RecipeRequest With(decimal budget) => new() { Area = goals.Area, Method = goals.Method, Seasons = goals.Seasons, Budget = budget };

        Assert.NotNull(RecipeProposal.Find(With(cost), Shelf).Recipe);
        var over = RecipeProposal.Find(With(cost - 0.01m), Shelf);
        Assert.Null(over.Recipe);
        Assert.Contains(over.Findings, f => f.Code == "blend-over-budget");
    }

    [Fact]
    public void Goals_that_no_lot_serves_are_said_to_fail()
    {
        var proposal = RecipeProposal.Find(Goals(SeasonOfUse.Summer), [Lot("winter-wheat", 0.38m, 90), Lot("oats-spring", 0.45m, 90)]);
        Assert.Null(proposal.Recipe);
        Assert.Contains(proposal.Findings, f => f.Code == "blend-no-recipe");
        Assert.Null(proposal.CheapestBySeasons[5].Recipe);
    }

    [Fact]
    public void Lots_that_do_not_fit_the_plot_are_named_with_their_reason()
    {
        var goals = new RecipeRequest { Area = Area.FromAcres(0.5), Method = SowingMethod.Broadcast, Soil = FitTests.Ground(5.4, DrainageClass.Poor) };
        var excluded = RecipeProposal.Find(goals, [.. Shelf, Lot("cereal-rye", 0.60m, 88)]).Excluded;

        Assert.Contains(excluded, e => e.Lot.Kind.Id == "ladino-clover" && e.Reason.Contains("pH 5.8-8", StringComparison.Ordinal));
        Assert.Contains(excluded, e => e.Lot.Kind.Id == "oats-spring" && e.Reason.Contains("drainage", StringComparison.Ordinal));
        Assert.Contains(excluded, e => e.Reason.Contains("living pound", StringComparison.Ordinal));
    }

    [Fact]
    public void What_stands_already_is_not_sown_again()
    {
        var clover = KindShare.FromShare(SampleBlends.Kind("ladino-clover"), 0.6);
        var bare = RecipeProposal.Find(Goals(Enum.GetValues<SeasonOfUse>()), Shelf).Recipe!;
        var goals = new RecipeRequest { Area = Area.FromAcres(0.5), Method = SowingMethod.Broadcast, Seasons = [.. Enum.GetValues<SeasonOfUse>()], Standing = [clover] };
        var over = RecipeProposal.Find(goals, Shelf).Recipe!;

        Assert.True(over.Cost < bare.Cost);
        Assert.Equal(5, over.Coverage.Covered);
        AssertMeetsGoals(over, goals);
    }

    [Fact]
    public void Whole_packages_are_costed_beside_the_weights()
    {
        Offer<SeedLot>[] bagged = [Bagged(Lot("oats-spring", 0.50m, 90), 50), Lot("medium-red-clover", 3.20m, 88)];
        RecipeProposal Find(decimal? budget) => RecipeProposal.Find(new RecipeRequest { Area = Area.FromAcres(0.25), Method = SowingMethod.Broadcast, MinimumKinds = 2, Budget = budget }, bagged);
        var recipe = Find(null).Recipe!;
        double oats = recipe.Batch.Lines.Single(l => l.Component.Kind.Id == "oats-spring").Weight.Pounds;

        // On a quarter acre the oats are less than one 50-lb bag of $25; clover is sold by weight.
        Assert.InRange(oats, 0.1, 50);
        Assert.Equal((double)recipe.Cost + (50 - oats) * 0.50, (double)recipe.CostInPackages, 1e-9);
        Assert.Contains(Find(null).ShowWork(), w => w.ToString().Contains("in whole packages", StringComparison.Ordinal));
        Assert.DoesNotContain(Find(null).Findings, f => f.Code == "blend-packages-over-budget");
        Assert.DoesNotContain(Find(recipe.CostInPackages).Findings, f => f.Code == "blend-packages-over-budget");
        Assert.Contains(Find(recipe.CostInPackages - 0.01m).Findings, f => f.Code == "blend-packages-over-budget");
        Assert.NotNull(Find(recipe.Cost).Recipe);
    }

    private static Offer<SeedLot> Bagged(Offer<SeedLot> lot, double pounds) => Offer.InBags(lot.Item, Mass.FromPounds(pounds), lot.PricePerPound * (decimal)pounds);

    [Fact]
    public void Goals_that_contradict_themselves_are_refused()
    {
        Assert.Throws<ArgumentException>(() => RecipeProposal.Find(new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, TotalFrom = 1.3 }, Shelf));
        Assert.Throws<ArgumentException>(() => RecipeProposal.Find(Goals(), []));
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(0), Method = SowingMethod.Broadcast });
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, Budget = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, Step = 0.009 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, Step = double.NaN });
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, TotalTo = 3.1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, MinimumKinds = 0 });
        Assert.Throws<ArgumentOutOfRangeException>(() => new RecipeRequest { Area = Area.FromAcres(1), Method = SowingMethod.Broadcast, SeasonShare = 0 });
    }

    [Property(Arbitrary = [typeof(RecipeArbitraries)], MaxTest = 40)]
    public bool Every_proposed_recipe_meets_its_goals(RecipeSketch sketch)
    {
        var proposal = RecipeProposal.Find(sketch.Goals, sketch.Lots);
        foreach (var recipe in proposal.CheapestBySeasons.Select(c => c.Recipe).Append(null).OfType<Recipe>())
        {
            AssertMeetsGoals(recipe, sketch.Goals, seasonsToo: false);
        }

        if (proposal.Recipe is { } best)
        {
            AssertMeetsGoals(best, sketch.Goals);
        }

        return proposal.CheapestBySeasons.All(c => c.Recipe is null || c.Recipe.Coverage.Covered >= c.Seasons);
    }

    [Property(Arbitrary = [typeof(RecipeArbitraries)], MaxTest = 12)]
    public bool The_order_of_lots_does_not_matter(RecipeSketch sketch)
    {
        var forward = RecipeProposal.Find(sketch.Goals, sketch.Lots).Recipe;
        var backward = RecipeProposal.Find(sketch.Goals, [.. sketch.Lots.Reverse()]).Recipe;
        return forward?.Blend.ToString() == backward?.Blend.ToString();
    }

    [Property(Arbitrary = [typeof(RecipeArbitraries)], MaxTest = 40)]
    public bool No_other_choice_of_steps_is_cheaper(RecipeSketch sketch)
    {
        var lots = sketch.Lots.DistinctBy(l => l.Item.Kind.Id).Take(5).ToArray();
        var goals = InQuarters(sketch.Goals.Area, 1 + sketch.Numbers[0] % 3, [.. sketch.Goals.Seasons.Take(3)]);
        return SameCost(CheapestByTrying(goals, lots), RecipeProposal.Find(goals, lots).Recipe?.Cost);
    }

    [Fact]
    public void Trying_every_choice_finds_the_same_recipe_for_the_shelf()
    {
        Offer<SeedLot>[] lots = [.. Shelf.Where(l => l.Item.Kind.Id is "oats-spring" or "cereal-rye" or "crimson-clover" or "ladino-clover" or "purple-top-turnip")];
        var goals = InQuarters(Area.FromAcres(0.5), 3, [SeasonOfUse.Summer, SeasonOfUse.MidFall, SeasonOfUse.LateWinter]);
        decimal? tried = CheapestByTrying(goals, lots);
        Assert.NotNull(tried);
        Assert.True(SameCost(tried, RecipeProposal.Find(goals, lots).Recipe?.Cost));
    }

    private static RecipeRequest InQuarters(Area area, int kinds, ImmutableArray<SeasonOfUse> seasons) =>
        new() { Area = area, Method = SowingMethod.Broadcast, Seasons = seasons, MinimumKinds = kinds, Step = 0.25, SmallestShare = 0.25, TotalTo = 1.5 };

    private static bool SameCost(decimal? tried, decimal? found) =>
        tried is null ? found is null : found is not null && Math.Abs(tried.Value - found.Value) <= 1e-9m * tried.Value;

    /// <summary>Every choice of shares in quarters of a full stand, for five kinds, tried one by one.</summary>
    private static decimal? CheapestByTrying(RecipeRequest goals, Offer<SeedLot>[] lots)
    {
        decimal? cheapest = null;
        for (int code = 1; code < 3125; code++)
        {
            var kinds = lots.Select((l, i) => (Component: BlendComponent.FromOffer(l, goals.Method), Share: 0.25 * (code / (int)Math.Pow(5, i) % 5))).Where(k => k.Share > 0).ToArray();
            if (kinds.Length < goals.MinimumKinds || kinds.Sum(k => k.Share) is < 1 or > 1.5)
            {
                continue;
            }

            var blend = Blend.FromSharesOfFullStand(kinds);
            if (CrowdingReport.For(blend).Groups.Any(g => g.IsOverCap) || goals.Seasons.Any(s => !SeasonCoverage.For(blend).Covers(s)))
            {
                continue;
            }

            decimal cost = BagOrder.For(blend, goals.Area).Cost!.Value;
            cheapest = cheapest is null || cost < cheapest ? cost : cheapest;
        }

        return cheapest;
    }

    private static void AssertMeetsGoals(Recipe recipe, RecipeRequest goals, bool seasonsToo = true)
    {
        var parts = recipe.Blend.Parts;
        double standing = goals.Standing.Sum(s => s.ShareOfFullStand);
        double total = parts.Sum(p => p.ShareOfFullStand.Chosen) + standing;
        Assert.InRange(total, goals.TotalFrom - 1e-9, goals.TotalTo + 1e-9);
        Assert.True(parts.Length >= goals.MinimumKinds);
        Assert.True(parts.Select(p => p.Kind.Family).Distinct().Count() >= goals.MinimumFamilies);
        Assert.All(parts, p => Assert.InRange(p.ShareOfFullStand.Chosen, goals.SmallestShare - 1e-9, goals.LargestShare + 1e-9));
        Assert.DoesNotContain(CrowdingReport.For(recipe.Blend, goals.Standing).Groups, g => g.IsOverCap);
        if (seasonsToo)
        {
            Assert.All(goals.Seasons, s => Assert.True(parts.Where(p => p.Kind.Seasons!.In(s) >= UseRating.Medium).Sum(p => p.ShareOfFullStand.Chosen)
                + goals.Standing.Where(k => k.Kind.Seasons!.In(s) >= UseRating.Medium).Sum(k => k.ShareOfFullStand) >= 0.25 - 1e-9));
        }

        decimal cost = recipe.Batch.Lines.Sum(l => l.Component.Offer!.PricePerPound * (decimal)l.Weight.Pounds);
        Assert.Equal((double)cost, (double)recipe.Cost, 1e-9);
        Assert.True(goals.Budget is null || recipe.Cost <= goals.Budget);
        Assert.Equal(cost, recipe.CostInPackages);
    }
}
