using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Plots;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Fertilizers;

/// <summary>A laboratory's sheet asks for three nutrients on a sandy quarter acre of oats. The store has one complete grade, in
/// bags of 40 pounds: how many of them, and what is left for straights?</summary>
internal static class WholeBags
{
    internal static void Answer(TextWriter output)
    {
        var soil = PlotSoil.For(new SoilReport { Laboratory = "the county's laboratory", WaterPh = WaterPh.FromValue(6.1) }) with
        {
            ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(2.6),
        };
        var need = PlotNeed.For(new PlotNeedRequest
        {
            Soil = soil,
            System = null,
            Kinds = [KindShare.FromShare(KindCatalog.Standard.Find("winter oats"), 1)],
            Printed = PrintedRecommendation.FromRates("the county's laboratory", "small grain for wildlife",
                PrintedRate.FromRate(PlantNutrient.Nitrogen, Pounds(40), Pounds(60)),
                PrintedRate.FromRate(PlantNutrient.Phosphate, Pounds(30)),
                PrintedRate.FromRate(PlantNutrient.Potash, Pounds(70))),
        });
        output.WriteLine($"Printed by {need.Printed}:");
        output.Tell(need);
        output.WriteLine(need.IsPotashSplit
            ? "Give the potash in two halves: so light a soil does not keep it."
            : "Give the potash at once.");

        var plot = Area.FromAcres(0.25);
        var balanced = FertilizerProduct.Create("balanced", FertilizerAnalysis.FromGrade("13-13-13"));
        var bag = Offer.InBags(balanced, Mass.FromPounds(40), 17.90m);
        var rate = SingleProductRate.PassingNone(bag.Item.Analysis, need);
        output.WriteLine("As much of the grade as passes no need:");
        output.Tell(rate);
        var own = RoundingTolerance.FromPercent(acceptPercent: 15, nitrogenOverPercent: 20, shortPercent: 30);
        output.WriteLine($"Whole bags, {own}:");
        output.Tell(RoundedAmounts.For(bag, rate.Rate, need, plot, own));
        output.WriteLine($"One bag on the plot is {Amounts.Print(bag.Package.RateOf(1, plot), "lb/ac", 0)}, a pound of its "
            + $"nitrogen {Currency.FromCode("USD").Print(bag.PricePerPoundOf(PlantNutrient.Nitrogen))} if the rest were for "
            + "nothing.");
    }

    private static ApplicationRate Pounds(double perAcre) => ApplicationRate.FromPoundsPerAcre(perAcre);
}
