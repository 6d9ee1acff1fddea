using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.FieldQuestions.Fertilizers;

/// <summary>An acre and a half of corn in rows 36 inches apart, on a silt loam. A jug of liquid starter could trickle onto the
/// seed, or a band beside it carry all of the phosphate.</summary>
internal static class StarterInTheRow
{
    private static readonly Density Weight = Density.FromPoundsPerUSGallon(11.65);

    internal static void Answer(TextWriter output)
    {
        var area = Area.FromAcres(1.5);
        var rows = Length.FromInches(36);
        var starter = FertilizerProduct.Liquid("starter", FertilizerAnalysis.FromGrade("10-34-0"), Weight);
        var printed = SeedPlacedLimit.All.First(l =>
            l.Crop == SeedRowCrop.Corn && l.Soil == SeedRowSoil.MediumToFine && l.RowSpacingLow is { Inches: 30 });
        var yours = printed.AtRowSpacing(rows)!;
        output.WriteLine($"In rows 30 inches apart the seed bears {Pounds(printed.Limit)} of nitrogen and potash, so "
            + $"{Pounds(printed.MostProduct(starter.Analysis))} of {starter}; in yours {Pounds(yours.Limit)}. "
            + $"[{printed.Origin}]");
        var most = yours.MostProduct(starter.Analysis)!.Value;
        output.WriteLine($"That is {Amounts.Print(starter.VolumeOf(most.Over(area)), "gal", 1)} on the plot, with "
            + $"{Pounds(starter.Analysis.Brings(PlantNutrient.Phosphate, most))} of phosphate.");

        var spread = ApplicationRate.FromPoundsPerAcre(45);
        var banded = NutrientNeed.BandedPhosphateFor(spread);
        output.WriteLine($"Two inches beside the seed {Pounds(banded)} of phosphate do what {Pounds(spread)} do when spread: "
            + $"{Amounts.Print(starter.Analysis.LiquidFor(PlantNutrient.Phosphate, banded, Weight, area), "gal", 1)} of "
            + $"starter, at {Amounts.Print(starter.Analysis.ContentPerGallon(PlantNutrient.Phosphate, Weight), "lb", 1)} of "
            + "phosphate a gallon.");
        output.WriteLine($"The jug you have bands {Pounds(starter.Analysis.Brings(PlantNutrient.Phosphate, most))}, worth "
            + $"{Pounds(NutrientNeed.BroadcastPhosphateFor(starter.Analysis.Brings(PlantNutrient.Phosphate, most)))} spread.");

        var jugs = starter.InJugs(Volume.FromUsGallons(2.5), pricePerJug: 26m);
        var triple = FertilizerProduct.Create("triple", FertilizerAnalysis.FromGrade("0-46-0"));
        var bags = Offer.InBags(triple, Mass.FromPounds(50), 31m);
        output.WriteLine("A pound of phosphate costs "
            + $"{Money(jugs.PricePerPoundOf(PlantNutrient.Phosphate, [(PlantNutrient.Nitrogen, 0.60m)]))} out of the jug, "
            + $"its nitrogen credited, and {Money(bags.PricePerPoundOf(PlantNutrient.Phosphate))} out of a bag of "
            + $"{bags.Item}.");

        var need = PlotNeed.Stated(NutrientTarget.Create(PlantNutrient.Phosphate, banded, null, "banded beside the corn"));
        var purchase = FertilizerShelf.FromOffers(jugs).Cheapest(need, area);
        if (purchase.Line("starter") is { SpreadVolume: { } volume } line)
        {
            output.WriteLine($"All of it from jugs: {Amounts.Print(line.Packages, 0)} for {Money(line.Cost)}, "
                + $"{Amounts.Print(volume, "gal", 1)} to spread, and "
                + $"{Pounds(purchase.Balance(PlantNutrient.Nitrogen)?.Surplus)} of nitrogen that nobody asked for.");
        }

        output.Warn(purchase.Findings);
    }

    private static string Pounds(ApplicationRate? rate) => rate is { } known ? Amounts.Print(known, "lb/ac", 1) : "nothing";

    private static string Money(decimal amount) => Currency.FromCode("USD").Print(amount);
}
