using System.Text.Json.Nodes;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>What is there already is used first, and nothing more is bought of it than there is.</summary>
public class ShedTests
{
    private static PlotPlan Demo(Action<JsonNode> change)
    {
        var reading = PlanFile.Read(EditedPlan.Of("fall-blend", change));
        Assert.True(reading.Problems.IsEmpty, string.Join('\n', reading.Problems));
        return reading.Plan!;
    }

    private static PlotPlan Demo() => Demo(_ => { });

    private static Offer<FertilizerProduct> Bag(string grade, decimal price, int? available = null)
    {
        Assert.True(FertilizerAnalysis.TryRead(grade, out var analysis, out _));
        return Offer.InBags(FertilizerProduct.Create(grade, analysis!), UnitsNet.Mass.FromPounds(50), price) with { Available = available };
    }

    /// <summary>Source: practice, case C25: 40-40-40 lb/ac from 13-13-13 takes 7 bags of 50 lb for an acre. Two are there for
    /// nothing, so five are bought.</summary>
    [Fact]
    public void C25_the_bags_in_the_shed_come_off_the_purchase()
    {
        var (bags, _) = PracticeCase.Expected("C25", "bags for 1 acre");
        var bought = Cheapest(40, Bag("13-13-13", 0, 2), Bag("13-13-13", 20));
        Assert.Equal(2, bought.Lines.Single(l => l.Offer.Available is not null).Packages);
        Assert.Equal(bags - 2, bought.Lines.Single(l => l.Offer.Available is null).Packages);
        Assert.Equal(100, bought.TotalCost);
        Assert.True(bought.MeetsEveryNeed);
    }

    /// <summary>Source: hand algebra. 20 lb of each from 154 lb of 13-13-13 takes four bags; the one that is there is spread whole,
    /// and what is left over is left in a bought bag.</summary>
    [Fact]
    public void What_is_there_is_spread_before_what_is_bought()
    {
        var bought = Cheapest(20, Bag("13-13-13", 0, 1), Bag("13-13-13", 20));
        Assert.Equal(50, bought.Lines.Single(l => l.Offer.Available is not null).Spread.Pounds, 1e-6);
        Assert.Equal((2000 / 13.0) - 50, bought.Lines.Single(l => l.Offer.Available is null).Spread.Pounds, 1e-4);
    }

    [Fact]
    public void What_is_there_and_of_no_use_is_not_on_the_list() =>
        Assert.DoesNotContain(Cheapest(20, Bag("0-0-60", 0, 1), Bag("13-13-13", 20)).Lines, l => l.Spread.Pounds <= 0);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(6)]
    public void Of_a_limited_product_no_more_is_bought_than_there_is(int available)
    {
        var bought = Cheapest(40, Bag("13-13-13", 5, available), Bag("10-10-10", 20));
        Assert.True(bought.Lines.Where(l => l.Offer.Available is not null).Sum(l => l.Packages) <= available);
        Assert.True(bought.MeetsEveryNeed);
    }

    [Fact]
    public void Where_there_is_too_little_of_everything_the_rest_is_missed_and_said()
    {
        var bought = Cheapest(40, Bag("13-13-13", 5, 2));
        Assert.False(bought.MeetsEveryNeed);
        Assert.True(bought.Lines.Sum(l => l.Packages) <= 2);
    }

    [Fact]
    public void No_limit_changes_nothing()
    {
        var free = Cheapest(40, Bag("13-13-13", 20), Bag("10-10-10", 14));
        var wide = Cheapest(40, Bag("13-13-13", 20, 1000), Bag("10-10-10", 14));
        Assert.Equal(free.TotalCost, wide.TotalCost);
        Assert.Equal(free.Lines.Select(l => l.Packages), wide.Lines.Select(l => l.Packages));
    }

    private static Purchase Cheapest(double each, params Offer<FertilizerProduct>[] offers)
    {
        var need = Fertilizers.FertilizerShelfTests.Need(each, each, each);
        return FertilizerShelf.FromOffers(offers).Cheapest(need, UnitsNet.Area.FromAcres(1));
    }

    [Fact]
    public void Lime_that_is_there_goes_on_first_and_the_rest_is_bought()
    {
        var whole = Demo().Solve().Lime.Value.Order.Value;
        int bags = whole.Bags!.Value;
        var plan = Demo() with
        {
            LimeOffers = [whole.Request is var r ? Offer.InBags(r.Material, r.Package.Weight, 0) with { Available = 2 } : null!, Offer.InBags(whole.Request.Material, whole.Request.Package.Weight, whole.Request.Price!.Value)],
        };
        var order = plan.Solve().Lime.Value.Order.Value;
        Assert.Equal(whole.Product.Pounds - (2 * whole.Request.Package.Weight.Pounds), order.Product.Pounds, 1e-6);
        Assert.InRange(order.Bags!.Value, bags - 2, bags - 1);
        Assert.Contains(plan.Solve().Findings, f => f.Code == "lime-from-stock");
    }

    [Fact]
    public void Of_lime_that_costs_something_no_more_is_ordered_than_there_is()
    {
        var whole = Demo().Solve().Lime.Value.Order.Value;
        var plan = Demo() with { LimeOffers = [Offer.InBags(whole.Request.Material, whole.Request.Package.Weight, 3m) with { Available = 1 }] };
        Assert.Equal(AnswerState.Open, plan.Solve().Lime.Value.Order.State);
        Assert.Contains(plan.Solve().Findings, f => f.Code == "lime-offer-too-few");
    }

    /// <summary>Source: computed. An open bag of a quarter of the seed is used whole, and three quarters come from the next lot of
    /// the same strength.</summary>
    [Fact]
    public void An_open_bag_of_seed_is_used_up_and_the_rest_bought()
    {
        var before = Demo().Solve().Seed.Value.Kinds[0];
        double quarter = before.Weight.Pounds / 4;
        var open = Offer.InBags(before.Planned.Offer.Item with { Label = "open" }, UnitsNet.Mass.FromPounds(quarter), 0) with { Available = 1 };
        var plan = Demo();
        plan = plan with { SeedOffers = [open, .. plan.SeedOffers], Kinds = [plan.Kinds[0] with { Choice = null, Offer = open }, .. plan.Kinds[1..]] };
        var sown = plan.Solve().Seed.Value.Kinds[0];
        Assert.Equal(1, sown.Packages);
        var rest = Assert.Single(sown.FromOthers);
        Assert.Equal(3 * quarter, rest.Weight.Pounds, 1e-9);
        Assert.Equal(Fraction.Zero, sown.Missing);
        Assert.Contains(plan.Solve().Findings, f => f.Code == "plan-lot-topped-up");
        Assert.Contains($"lot {rest.Offer.Item.Label}", FieldSheet.Of(plan.Solve()).ToText(200), StringComparison.Ordinal);
    }

    /// <summary>Source: hand algebra. Living seed counts alike: where the open bag is half as strong as the lot that gives the rest, it
    /// gives half as much of the stand, so the weight of both is below what the open bag alone would take; rate, load, table and list
    /// say that weight.</summary>
    [Fact]
    public void Seed_of_two_lots_of_unlike_strength_is_weighed_by_the_strength_of_each()
    {
        var plan = Demo();
        var fresh = plan.Kinds[0].Offer.Item;
        double alone = plan.Solve().Seed.Value.Kinds[0].Weight.Pounds;
        var half = fresh with { Label = "open", Analysis = SeedAnalysis.FromFractions(Fraction.FromValue(fresh.Analysis.PureSeed.Value / 2), fresh.Analysis.Germination, fresh.Analysis.HardSeed) };
        var open = Offer.InBags(half, UnitsNet.Mass.FromPounds(alone / 2), 0) with { Available = 1 };
        plan = plan with { SeedOffers = [open, .. plan.SeedOffers], Kinds = [plan.Kinds[0] with { Choice = null, Offer = open }, .. plan.Kinds[1..]] };
        var answers = plan.Solve();
        var sown = answers.Seed.Value.Kinds[0];

        // Half the weight at half the strength is a quarter of the stand; the fresh lot gives three quarters at its own.
        Assert.Equal(0.75 * alone, Assert.Single(sown.FromOthers).Weight.Pounds, 1e-9);
        Assert.Equal(0.5 * alone + 0.75 * alone, sown.Weight.Pounds, 1e-9);
        Assert.Equal(alone / 2, sown.OfPlanned.Pounds, 1e-9);
        Assert.Equal(sown.Weight.Pounds, sown.Rate.Over(sown.Ground).Pounds, 1e-9);
        var pass = answers.Spreading.Value.Passes.Single(p => p.Kinds.Contains(sown));
        Assert.Equal(pass.Kinds.Sum(k => k.Weight.Pounds), pass.Load.Pounds, 1e-9);
        Assert.Equal(pass.Kinds.Sum(k => k.Rate.PoundsPerAcre), pass.Rate.PoundsPerAcre, 1e-9);
        string sheet = FieldSheet.Of(answers).ToText(200, showWork: true);
        Assert.Contains($"{Amounts.Print(sown.Rate.PoundsPerAcre, 2)}", sheet, StringComparison.Ordinal);
        Assert.Contains("part of the living seed x what it would take alone = 0.25 x ", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void Seed_that_no_lot_has_is_missing()
    {
        var plan = Demo();
        var only = plan.Kinds[0].Offer with { Package = Package.FromWeight(UnitsNet.Mass.FromPounds(0.01)), Available = 1 };
        plan = plan with { SeedOffers = [only], Kinds = [plan.Kinds[0] with { Choice = null, Offer = only }, .. plan.Kinds[1..]] };
        Assert.True(plan.Solve().Seed.Value.Kinds[0].Missing > Fraction.FromPercent(50));
        Assert.Contains(plan.Solve().Findings, f => f.Code == "plan-lot-short");
    }

    /// <summary>Source: hand algebra. Half of what the plot takes of one kind and twice of another: half the plot is planted, and
    /// of the second three quarters are left.</summary>
    [Fact]
    public void What_is_there_plants_so_much_ground_and_one_kind_runs_out_first()
    {
        var plan = Demo();
        var sown = plan.Solve().Seed.Value.Kinds;
        // The passes sow a little beside the plot too; what the plot alone takes is the rate times its area.
        double first = sown[0].Bulk.Bulk.PoundsPerAcre * plan.Plot.Area.Acres, second = sown[1].Bulk.Bulk.PoundsPerAcre * plan.Plot.Area.Acres;
        plan = plan with
        {
            SeedOffers = [],
            Kinds = [There(plan.Kinds[0], first / 2), There(plan.Kinds[1], second * 2), .. plan.Kinds[2..]],
        };
        var counted = plan.UseUp().Value;
        Assert.Equal(2, counted.Seeds.Length);
        Assert.Equal(plan.Plot.Area.Acres / 2, counted.Plants!.Value.Acres, 1e-9);
        Assert.Equal(plan.Kinds[0].Kind.ShortName, counted.RunsOutFirst!.Name);
        Assert.Equal(first / 2, counted.RunsOutFirst.ShortForPlot.Pounds, 1e-9);
        Assert.Equal(second * 1.5, counted.Seeds[1].Left.Pounds, 1e-9);
        Assert.Contains("then " + counted.RunsOutFirst.Name + " runs out", FieldSheet.Of(counted).ToText(100), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nothing_says_how_much_there_is_nothing_is_counted() =>
        Assert.Equal(AnswerState.NoneNeeded, Demo().UseUp().State);

    [Fact]
    public void Lime_and_fertilizer_that_are_there_count_each_alone()
    {
        var plan = Demo(p =>
        {
            p["materials"]!["lime"]![0]!["available"] = 3;
            p["materials"]!["fertilizers"]![0]!["available"] = 1;
        });
        var counted = plan.UseUp().Value;
        Assert.Null(counted.Plants);
        Assert.All(counted.Others, o => Assert.Equal(o.There.Pounds / o.Rate.PoundsPerAcre, o.Ground.Acres, 1e-9));
        Assert.NotEmpty(counted.Others);
        Assert.Null(Difference.Between(plan, PlanFile.Read(PlanFile.Write(plan)).Plan));
    }

    private static PlannedKind There(PlannedKind kind, double pounds) =>
        kind with { Choice = null, Offer = kind.Offer with { Package = Package.FromWeight(UnitsNet.Mass.FromPounds(pounds)), Available = 1 } };
}
