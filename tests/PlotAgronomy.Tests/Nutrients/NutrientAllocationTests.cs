using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using static PlotAgronomy.Tests.Nutrients.SystemRequests;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>A call that is not asked for words makes none: a column of a hundred thousand reports must not pay for them.</summary>
public class NutrientAllocationTests
{
    private const SoilTestUnit Ppm = SoilTestUnit.PartsPerMillion;

    private static PlotSoil Known(SoilReport report) => PlotSoil.For(report with
    {
        SampleMoisture = SampleMoisture.Dried,
        PrintedPhosphorusRating = "medium",
    }) with
    {
        ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(10),
        PhosphorusSupply = SoilSupply.Medium,
        ExchangeCapacityGroup = SoilSupply.High,
    };

    [Fact]
    public void A_recommendation_without_text_allocates_little_by_every_system()
    {
        var soil = Known(Report(
            PIndex(25), KIndex(15), P(12, Ppm, Extractant.BrayP1), P(18, Ppm, Extractant.Mehlich3), P(9, Ppm, Extractant.Olsen),
            P(12, Ppm, Extractant.Mehlich1), K(100, Ppm, Extractant.AmmoniumAcetate), K(114, Ppm, Extractant.Mehlich3), K(90, Ppm, Extractant.Mehlich1)));
        Assert.All(RecommendationSystem.Everything, system =>
        {
            var row = system.Accepts[0].Crops[0];
            var use = CropUse.Browsed(row, YieldFor(row, 5));
            Assert.InRange(Allocations.BytesOf(() => system.Recommend(soil, use)), 1, 256);
        });
    }

    [Fact]
    public void A_refusal_without_text_allocates_as_little()
    {
        var (bare, corn) = (Known(Report(P(18, Ppm, Extractant.Mehlich1))), CropUse.Browsed(CropRow.Corn));
        Assert.All(RecommendationSystem.Everything, system =>
            Assert.InRange(Allocations.BytesOf(() => system.Recommend(bare, corn)), 1, 256));
    }

    [Fact]
    public void A_rating_without_text_allocates_little() =>
        Assert.InRange(Allocations.BytesOf(() => RatingSystem.Delaware.Rate(Readings)), 1, 1200);

    [Fact]
    public void A_nitrogen_answer_without_text_allocates_little() =>
        Assert.InRange(Allocations.BytesOf(() => NitrogenRule.Find("north-carolina-plot").Answer()), 1, 600);

    [Fact]
    public void A_boron_answer_without_text_allocates_little()
    {
        var report = Report(SoilReading.FromPrinted(SoilAnalyte.Boron, 0.4, Ppm, Extractant.HotWater));
        Assert.InRange(Allocations.BytesOf(() => SecondaryRule.PlotBoron.Answer(report)), 1, 700);
    }

    [Fact]
    public void A_legume_credit_without_text_allocates_little() =>
        Assert.InRange(Allocations.BytesOf(() => LegumeCredit.Find("tennessee-cover").For(LegumeStand.Earlier)), 1, 100);

    [Fact]
    public void A_removal_without_text_allocates_little() =>
        Assert.InRange(Allocations.BytesOf(() => CropRemoval.CarriedOff(RemovalFigure.Find("illinois-corn"), CropYield.FromBushelsPerAcre(100))), 1, 800);

    [Fact]
    public void A_plots_need_without_text_allocates_a_few_kilobytes() =>
        Assert.InRange(Allocations.BytesOf(() => PlotNeed.For(NeedSamples.Request(NeedSamples.Kind("oats-spring", 0.5), NeedSamples.Kind("ladino-clover", 0.6)))), 1, 15000);

    [Fact]
    public void A_manganese_index_without_text_allocates_little()
    {
        var manganese = SoilReading.FromPrinted(SoilAnalyte.Manganese, 40, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3);
        var ph = WaterPh.FromValue(6);
        Assert.InRange(Allocations.BytesOf(() => ManganeseAvailability.NorthCarolinaA(manganese, ph)), 1, 100);
    }

    private static readonly SoilReport Readings = Report(P(18, Ppm, Extractant.Mehlich3), K(114, Ppm, Extractant.Mehlich3));
}
