using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>A store's shelf, a need and a plot, drawn from one seed so that a failure names itself.</summary>
public sealed record ShelfCase(int Seed, FertilizerShelf Shelf, PlotNeed Need, double Acres)
{
    public override string ToString() => $"seed {Seed}: {Acres} ac, {string.Join("; ", Need.Targets)} from {string.Join("; ", Shelf.Offers.Select(o => $"{o.Item} {o.Price}"))}";
}

public static class ShelfArbitraries
{
    private static readonly string[] Grades =
        ["46-0-0", "18-46-0", "0-0-60", "13-13-13", "19-19-19", "0-46-0", "11-52-0", "6-24-24", "10-10-10", "21-0-0-24S", "0-20-20", "0-0-22-11Mg-22S", "34-0-0", "5-10-15"];

    public static Arbitrary<ShelfCase> Shelves() =>
        ArbMap.Default.ArbFor<NonNegativeInt>().Convert(n => Draw(n.Get), c => (NonNegativeInt)NonNegativeInt.NewNonNegativeInt(c.Seed));

    private static ShelfCase Draw(int seed)
    {
        var random = new Random((seed * 7919) + 13);
        var products = Enumerable.Range(0, random.Next(2, 9)).Select(_ =>
            FertilizerShelfTests.Bag(Grades[random.Next(Grades.Length)], random.Next(12, 55), random.Next(3) == 0 ? 40 : 50)).ToList();
        var need = FertilizerShelfTests.Need(
            random.Next(2) * random.Next(10, 80), random.Next(2) * random.Next(10, 80), random.Next(10, 100),
            mostNitrogen: random.Next(3) == 0 ? random.Next(80, 140) : null, mostPhosphate: random.Next(3) == 0 ? random.Next(80, 120) : null);
        return new ShelfCase(seed, FertilizerShelf.FromOffers(products), need, random.Next(2, 40) / 10.0);
    }
}

[Properties(Arbitrary = [typeof(ShelfArbitraries), typeof(PlotArbitraries)], MaxTest = 150)]
public class FertilizerShelfProperties
{
    private static readonly PurchaseForm[] Forms = Enum.GetValues<PurchaseForm>();

    [Property]
    public void Delivered_nutrients_are_within_bounds_whenever_a_plan_fits(ShelfCase c)
    {
        foreach (var form in Forms)
        {
            var plan = c.Shelf.Cheapest(c.Need, Area.FromAcres(c.Acres), form);
            Assert.Equal(plan.Conflict is null, plan.MeetsEveryNeed);
            Assert.All(plan.Balances, b => Assert.True(b.AtMost is not { } most || b.Delivered.PoundsPerAcre <= most.PoundsPerAcre * (1 + 1e-6), b.ToString()));
            Assert.All(plan.Lines, l => Assert.True(l.Spread.Pounds <= (l.Packages * l.Offer.Package.Weight.Pounds) + 1e-6));
            Assert.True(plan.IsProvenCheapest && plan.ProvenGap == 0);
        }
    }

    [Property]
    public void The_exact_plan_is_never_dearer_and_spreading_whole_never_cheaper(ShelfCase c)
    {
        var plans = Forms.Select(f => c.Shelf.Cheapest(c.Need, Area.FromAcres(c.Acres), f)).ToList();
        if (plans.All(p => p.MeetsEveryNeed))
        {
            Assert.True((double)plans[0].TotalCost <= (double)plans[1].TotalCost + 1e-6);
            Assert.True((double)plans[1].TotalCost <= (double)plans[2].TotalCost + 1e-6);
        }
    }

    [Property]
    public void Cost_never_falls_when_a_need_rises(ShelfCase c, int extra)
    {
        foreach (var form in Forms)
        {
            double more = 1 + Math.Abs(extra % 20);
            var raised = PlotNeed.Stated([.. c.Need.Targets.Select(t => t.Nutrient != PlantNutrient.Potash ? t
                : FertilizerShelfTests.Target(t.Nutrient, t.AtLeast.PoundsPerAcre + more))]);
            AssertNotCheaper(c.Shelf.Cheapest(c.Need, Area.FromAcres(c.Acres), form), c.Shelf.Cheapest(raised, Area.FromAcres(c.Acres), form));
        }
    }

    [Property]
    public void Cost_never_falls_when_a_product_is_removed(ShelfCase c, int which)
    {
        var fewer = c.Shelf.Offers.RemoveAt(Math.Abs(which % c.Shelf.Offers.Length));
        foreach (var form in Forms)
        {
            AssertNotCheaper(c.Shelf.Cheapest(c.Need, Area.FromAcres(c.Acres), form), FertilizerShelf.FromOffers([.. fewer]).Cheapest(c.Need, Area.FromAcres(c.Acres), form));
        }
    }

    [Property]
    public void The_exact_plan_scales_with_the_area(ShelfCase c)
    {
        var one = c.Shelf.Cheapest(c.Need, Area.FromAcres(c.Acres), PurchaseForm.WeighExact);
        var three = c.Shelf.Cheapest(c.Need, Area.FromAcres(3 * c.Acres), PurchaseForm.WeighExact);
        Assert.True(Near.Equal(3 * (double)one.TotalCost, (double)three.TotalCost, 1e-8));
    }

    [Property]
    public void The_order_of_the_shelf_changes_nothing(ShelfCase c, int turn)
    {
        int at = Math.Abs(turn % c.Shelf.Offers.Length);
        var turned = FertilizerShelf.FromOffers([.. c.Shelf.Offers.Skip(at).Concat(c.Shelf.Offers.Take(at)).Reverse()]);
        foreach (var form in Forms)
        {
            string[] Lines(FertilizerShelf shelf) => [.. shelf.Cheapest(c.Need, Area.FromAcres(c.Acres), form).Lines.Select(l => l.ToString())];
            Assert.Equal(Lines(c.Shelf), Lines(turned));
        }
    }

    [Property]
    public void The_next_cheapest_set_is_no_cheaper_and_another_set(ShelfCase c)
    {
        var area = Area.FromAcres(c.Acres);
        var first = c.Shelf.Cheapest(c.Need, area);
        if (c.Shelf.NextCheapest(c.Need, area) is { } next)
        {
            Assert.True(next.TotalCost >= first.TotalCost && next.MeetsEveryNeed);
            Assert.NotEqual(first.Lines.Select(l => $"{l.Product} {l.Offer.Price} {l.Packages}"), next.Lines.Select(l => $"{l.Product} {l.Offer.Price} {l.Packages}"));
        }
    }

    [Property]
    public void The_fewest_products_are_no_more_and_no_cheaper(ShelfCase c)
    {
        var area = Area.FromAcres(c.Acres);
        var first = c.Shelf.Cheapest(c.Need, area);
        var fewest = c.Shelf.FewestProducts(c.Need, area);
        Assert.Equal(first.MeetsEveryNeed, fewest is not null);
        Assert.True(fewest is null || (fewest.Lines.Length <= first.Lines.Length && fewest.TotalCost >= first.TotalCost && fewest.MeetsEveryNeed));
    }

    [Property]
    public void The_marginal_cost_is_what_one_more_pound_costs(ShelfCase c)
    {
        // By the definition of the dual: a small rise of a need costs at least its price, and the price is a subgradient.
        var area = Area.FromAcres(1);
        var plan = c.Shelf.Cheapest(c.Need, area, PurchaseForm.WeighExact);
        if (!plan.MeetsEveryNeed)
        {
            return;
        }

        const double Step = 0.5;
        var raised = PlotNeed.Stated([.. c.Need.Targets.Select(t => t.Nutrient != PlantNutrient.Potash ? t : FertilizerShelfTests.Target(t.Nutrient, t.AtLeast.PoundsPerAcre + Step))]);
        var more = c.Shelf.Cheapest(raised, area, PurchaseForm.WeighExact);
        double price = (double)plan.MarginalCosts.Single(m => m.Nutrient == PlantNutrient.Potash).PerPoundNeeded;
        Assert.True(!more.MeetsEveryNeed || (double)(more.TotalCost - plan.TotalCost) >= (price * Step) - 1e-6);
    }

    [Property]
    public bool Metric_and_US_input_give_one_answer(ApplicationRate need) =>
        Near.Equal(
            FertilizerAnalysis.FromGrade("13-13-13").RateFor(PlantNutrient.Nitrogen, need).PoundsPerAcre,
            FertilizerAnalysis.FromGrade("13-13-13").RateFor(PlantNutrient.Nitrogen, ApplicationRate.FromKilogramsPerHectare(need.KilogramsPerHectare)).PoundsPerAcre);

    [Property]
    public bool Product_and_content_are_inverse(ApplicationRate need) =>
        Near.Equal(need.PoundsPerAcre, FertilizerAnalysis.FromGrade("6-24-24").Brings(PlantNutrient.Phosphate, FertilizerAnalysis.FromGrade("6-24-24").RateFor(PlantNutrient.Phosphate, need)).PoundsPerAcre);

    private static void AssertNotCheaper(Purchase before, Purchase after)
    {
        if (!before.MeetsEveryNeed)
        {
            Assert.False(after.MeetsEveryNeed);
        }
        else if (after.MeetsEveryNeed)
        {
            Assert.True((double)after.TotalCost >= (double)before.TotalCost - 1e-6, $"{before.TotalCost} then {after.TotalCost}");
        }
    }
}
