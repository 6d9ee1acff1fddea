using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Seeds;

/// <summary>Cereal rye of small kernels: 250 were counted and weighed. It can go through a borrowed drill with rows 7.5 inches
/// apart, or out of a spreader.</summary>
internal static class HowManySeeds
{
    internal static void Answer(TextWriter output)
    {
        var rye = KindCatalog.Standard.Find("cereal rye");
        var counted = SeedCount.FromWeighedSample(250, Mass.FromGrams(5.5));
        var bought = SeedCount.FromThousandSeedWeight(Mass.FromGrams(28), "the weight of a thousand on last year's tag");
        output.WriteLine($"A pound of it is {Print(counted.SeedsPerPound)} seeds, of last year's {Print(bought.SeedsPerPound)}.");

        var target = DensityTarget.For(rye)[0];
        output.WriteLine($"Aim, in living seeds: {target}.");
        var aim = SeedDensity.FromSeedsPerSquareFoot(target.HighPerSquareFoot);
        var drilled = aim.RateOf(counted, SowingMethod.Drilled);
        var rows = Length.FromInches(7.5);
        output.WriteLine($"Drilled, that is {Pounds(drilled)} alive, {Amounts.Print(aim.InRows(rows).SeedsPerFoot, 1)} seeds "
            + $"a foot of row; last year's rate of {Pounds(aim.RateOf(bought, SowingMethod.Drilled))} would lay "
            + $"{Print(SeedDensity.FromRate(aim.RateOf(bought, SowingMethod.Drilled), counted).SeedsPerSquareFoot)} on each "
            + "square foot.");

        // The drill's chart stands at 70 lb; the tag says 98 % pure and 90 % germination.
        var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(90));
        var sown = PureLiveSeed.Delivered(BulkSeedRate.DrilledPoundsPerAcre(70), tag, ViabilityRule.For(rye));
        var seeds = SeedDensity.FromRate(sown, counted);
        var plants = seeds.PlantsLeft(emerging: Fraction.FromPercent(80), surviving: Fraction.FromPercent(85));
        output.WriteLine($"The chart's 70 lb lays {Print(seeds.SeedsPerSquareFoot)} live seeds and leaves "
            + $"{Print(plants.SeedsPerSquareFoot)} plants a square foot after a common winter.");

        var found = SeedDensity.FromRows(RowDensity.FromSeedsPerFoot(11), rows);
        var again = found.DrilledRateAfterLoss(Fraction.FromPercent(32), counted);
        output.WriteLine($"Eleven plants counted in a foot of row are {Print(found.SeedsPerSquareFoot)} on a square foot; "
            + $"where a third of the seed is lost, they took {Pounds(again)} of living seed.");

        var spread = BroadcastFactor.BroadcastFrom(drilled, SeedbedCover.DraggedOrRolled);
        var frost = BroadcastFactor.FrostSeededFrom(spread);
        var ratios = BroadcastFactor.All;
        output.WriteLine($"Spread and dragged in, the aim takes {Pounds(spread)}; on frozen ground {Pounds(frost.Low)} to "
            + $"{Pounds(frost.High)}. In print, spread over drilled is {Amounts.Print(ratios.Min(r => r.Low), 1)} to "
            + $"{Amounts.Print(ratios.Max(r => r.High), 1)}; {BroadcastFactor.Find("rye-oats").Context}.");
        var chart = BroadcastFactor.DrilledFrom(PureLiveSeedRate.BroadcastPoundsPerAcre(120), SeedbedCover.CoveredAndRolled);
        output.WriteLine($"A food-plot chart's 120 lb, spread and rolled, stands for {Pounds(chart)} drilled.");
    }

    private static string Print(double number) => Amounts.Print(number, 0);

    private static string Pounds(PureLiveSeedRate rate) => Amounts.Print(rate.Rate, "lb/ac", 0);
}
