using PlotAgronomy.Liming;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Planning;

/// <summary>A plan is a fact that checks itself and can be changed by <c>with</c>.</summary>
public class PlotPlanTests
{
    private static PlotPlan Demo => PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))).Plan!;

    [Fact]
    public void A_what_if_leaves_the_plan_as_it_was()
    {
        var plan = Demo;
        decimal before = plan.Solve().TotalCost;
        var without = plan with { LimeOffers = [] };
        Assert.True(without.Solve().TotalCost < before);
        Assert.Equal(before, plan.Solve().TotalCost);
        Assert.NotEqual(plan, without);
        Assert.Equal(plan.GetHashCode(), plan.GetHashCode());
    }

    [Fact]
    public void Two_plans_of_the_same_words_are_two_plans() => Assert.NotEqual(Demo, Demo);

    [Fact]
    public void A_plan_says_its_plot_and_day() => Assert.Equal("Fern Bottom, 0.585 ac, planting of 2026-09-12", Demo.ToString());

    [Fact]
    public void The_total_is_the_sum_of_lime_fertilizer_and_seed()
    {
        var answers = Demo.Solve();
        decimal parts = (answers.Lime.Value.Order.Value.Cost ?? 0) + answers.Fertilizer.Value.Purchase.Value.TotalCost + answers.Seed.Value.Kinds.Sum(k => k.Cost);
        Assert.Equal(parts, answers.TotalCost);
        Assert.True(parts > 0);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(24)]
    public void Ground_is_worked_above_0_and_less_than_24_inches_deep(double inches)
    {
        var refused = Assert.Throws<ArgumentOutOfRangeException>(() => Demo with { TillageDepth = Length.FromInches(inches) });
        Assert.Equal("TillageDepth", refused.ParamName);
        Assert.Contains("24 in", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(3.9)]
    [InlineData(9.1)]
    public void A_target_outside_4_to_9_is_refused(double ph) =>
        Assert.Contains("pH", Assert.Throws<ArgumentOutOfRangeException>(() => Demo with { StatedTargetPh = ph }).Message, StringComparison.Ordinal);

    [Fact]
    public void A_plan_grows_each_kind_once_from_a_lot_of_that_kind()
    {
        var plan = Demo;
        var first = plan.Kinds[0];
        var other = plan.Kinds.First(k => k.Kind.Id != first.Kind.Id);
        Assert.Throws<ArgumentException>(() => plan with { Kinds = default });
        Assert.Contains("twice", Assert.Throws<ArgumentException>(() => plan with { Kinds = [first, first] }).Message, StringComparison.Ordinal);
        Assert.Contains("lot of", Assert.Throws<ArgumentException>(() => plan with { Kinds = [first with { Offer = other.Offer }] }).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Parts_of_a_plan_refuse_what_cannot_be()
    {
        var plan = Demo;
        var offer = plan.SeedOffers[0];
        Assert.Throws<ArgumentNullException>(() => offer with { Package = null! });
        Assert.Throws<ArgumentOutOfRangeException>(() => offer with { Price = -1 });
        Assert.Contains("ft", Assert.Throws<ArgumentOutOfRangeException>(() => plan.Spreader! with { Swath = Length.FromFeet(-1) }).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => plan.Spreader! with { Hopper = Volume.FromCubicFeet(0) });
        Assert.Throws<ArgumentException>(() => plan.Plot with { Name = " " });
        Assert.Throws<ArgumentOutOfRangeException>(() => plan.Plot with { CoverShare = 1.01 });
        Assert.Throws<ArgumentNullException>(() => plan.Plot with { Measured = null! });
        var run = plan.Spreader!.Runs[0];
        Assert.Throws<ArgumentOutOfRangeException>(() => run with { Gate = -1 });
        Assert.Throws<ArgumentOutOfRangeException>(() => run with { Time = TimeSpan.Zero });
        Assert.Throws<ArgumentOutOfRangeException>(() => run with { Weighed = Mass.Zero });
        Assert.Throws<ArgumentOutOfRangeException>(() => run with { Distance = Length.Zero });
        Assert.Throws<ArgumentException>(() => new PrintedAdvice { Crop = "" });
    }

    [Fact]
    public void Lime_sold_in_bulk_is_bought_by_the_ton()
    {
        var plan = Demo;
        var answers = (plan with { LimeOffers = [Offer.InBulk(plan.LimeOffers[0].Item, pricePerTon: 50)] }).Solve();
        var order = answers.Lime.Value.Order.Value;
        Assert.Null(order.Bags);
        double tons = order.Product.ShortTons;
        Assert.Equal(50 * tons, (double)order.Cost!.Value, 0.01);
        Assert.Contains(FieldSheet.Of(answers).Figures, f => f.Label == "buy" && f.Value.Contains("ton in bulk", StringComparison.Ordinal));
    }
}
