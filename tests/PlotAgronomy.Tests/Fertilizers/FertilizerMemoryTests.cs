using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerMemoryTests
{
    private static readonly Offer<FertilizerProduct> Grade = Offer.InBags(FertilizerProduct.Create("a bag", FertilizerAnalysis.FromPercent(10, 10, 10)), Mass.FromPounds(50), 20m);

    private static readonly PlotNeed Need = PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 40), Target(PlantNutrient.Potash, 60));

    [Fact]
    public void Bags_of_a_rate_allocate_little()
    {
        var rate = ApplicationRate.FromPoundsPerAcre(400);
        Assert.InRange(Allocations.BytesOf(() => Package.RoundUp(rate.Over(Area.FromAcres(0.6)), Mass.FromPounds(50))), 0, 40);
        Assert.InRange(Allocations.BytesOf(() => RoundedAmounts.For(Grade, rate, Need, Area.FromAcres(0.6))), 0, 2000);
    }

    [Fact]
    public void A_rate_of_one_grade_without_text_allocates_little()
    {
        Assert.InRange(Allocations.BytesOf(() => SingleProductRate.MeetingAll(Grade.Item.Analysis, Need)), 0, 600);
        Assert.InRange(Allocations.BytesOf(() => SingleProductRate.PassingNone(Grade.Item.Analysis, Need)), 0, 600);
    }

    [Fact]
    public void Manure_sized_by_nitrogen_shows_what_is_available()
    {
        var lot = Manure.Analyzed("a lot", 40, 30, 20);
        var half = NitrogenAvailability.FromFraction(Fraction.FromPercent(50));
        string[] lines = [.. lot.ForNitrogen(ApplicationRate.FromPoundsPerAcre(60), half).ShowWork().Select(l => l.ToString())];
        Assert.StartsWith("Available nitrogen = total nitrogen x part available = 40 lb/ton x 0.5 = 20 lb/ton", lines[0]);
        Assert.Equal(2, lot.ForPhosphate(ApplicationRate.FromPoundsPerAcre(60), PhosphateAvailability.All, half).ShowWork().Length);
    }

    [Fact]
    public void A_mixed_batch_shows_the_grade_it_comes_to()
    {
        var urea = Offer.InBags(FertilizerProduct.Create("urea", FertilizerAnalysis.FromPercent(46, 0, 0)), Mass.FromPounds(50), 25m);
        var potash = Offer.InBags(FertilizerProduct.Create("potash", FertilizerAnalysis.FromPercent(0, 0, 60)), Mass.FromPounds(50), 24m);
        var lines = GradeMix.For(FertilizerAnalysis.FromPercent(23, 0, 30), Mass.FromPounds(2000), urea, potash).ShowWork();
        Assert.Contains("N, percent of the mixture = 100 x nutrient / weight = 100 x 460 lb / 2,000 lb = 23 %", lines.Select(l => l.ToString()));
    }

    [Fact]
    public void A_liquid_shows_what_a_gallon_holds()
    {
        var liquid = FertilizerProduct.Liquid("a liquid", FertilizerAnalysis.FromPercent(28, 0, 0), DensityOf(10)).InJugs(Volume.FromUsGallons(2.5), 30m);
        var plan = FertilizerShelf.FromOffers(liquid).Cheapest(PlotNeed.Stated(Target(PlantNutrient.Nitrogen, 40)), Area.FromAcres(0.6), PurchaseForm.BuyWholePackages);
        Assert.Contains(plan.ShowWork(), l => l.Label.StartsWith("N in a gallon of a liquid", StringComparison.Ordinal) && l.Numbers == "10 x 28 / 100 = 2.8 lb/gal");
    }

    private static Density DensityOf(double poundsPerGallon) => Density.FromPoundsPerUSGallon(poundsPerGallon);

    private static NutrientTarget Target(PlantNutrient nutrient, double pounds) =>
        NutrientTarget.Create(nutrient, ApplicationRate.FromPoundsPerAcre(pounds), null, "soil test");
}
