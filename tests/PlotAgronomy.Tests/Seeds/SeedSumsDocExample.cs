using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>The sums people look for, as the page shows them.</summary>
public class SeedSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/seeds.md", "tests/PlotAgronomy.Tests/Seeds/SeedSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // How many seeds fall on a square foot, and what rate gives a wanted number?
        var clover = KindCatalog.Standard.Find("crimson-clover").RequireSeedCount();
        var seeds = SeedDensity.FromRate(PureLiveSeedRate.DrilledPoundsPerAcre(15), clover);
        output.WriteLine($"15 lb/ac: {Amounts.Print(seeds.SeedsPerSquareFoot, 1)} live seeds on a square foot");
        output.WriteLine($"60 of them: {SeedDensity.FromSeedsPerSquareFoot(60).RateOf(clover, SowingMethod.Drilled)}");
        var plants = seeds.PlantsLeft(emerging: Fraction.FromPercent(60), surviving: Fraction.FromPercent(80));
        output.WriteLine($"of which {Amounts.Print(plants.SeedsPerSquareFoot, 1)} become plants");

        // A row drill: wheat for 1,200,000 plants an acre, a quarter lost, rows 7.5 in apart.
        var wheat = SeedCount.FromSeedsPerPound(15_000);
        output.WriteLine($"{wheat.SeedsPerPound:0} seeds per lb are {wheat.SizeClass} seed: "
            + SeedDensity.FromSeedsPerAcre(1_200_000).DrilledRateAfterLoss(Fraction.FromPercent(25), wheat));
        var inARow = SeedDensity.FromSeedsPerAcre(1_600_000).InRows(Length.FromInches(7.5));
        output.WriteLine($"{Amounts.Print(inARow.SeedsPerFoot, 1)} seeds a foot of row, {Amounts.Print(SeedDensity.FromRows(inARow, Length.FromInches(7.5)).SeedsPerAcre, 0)} an acre");

        // What a drill that was set for 12 lb/ac sows, and the living seed in a bag.
        output.WriteLine($"on half an acre {BulkSeedRate.DrilledPoundsPerAcre(12).Over(Area.FromAcres(0.5))}");
        var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(90), Fraction.FromPercent(80),
            coating: SeedAnalysis.CoatingFromBuildUp(poundsOfCoatingPerPoundOfSeed: 0.1));
        var living = PureLiveSeed.Held(BulkSeedMass.FromPounds(50), tag, ViabilityRule.GerminationOnly).ToMass();
        double extra = PureLiveSeed.ExtraToBuy(tag, ViabilityRule.GerminationOnly);
        output.WriteLine($"a bag of 50 lb holds {Amounts.Print(living, "lb", 1)} of living seed: buy {Amounts.Print(Fraction.FromValue(extra), 0)} more");

        // A home test: 82 of 100 came up.
        var test = GerminationTest.FromCount(82, 100);
        output.WriteLine($"{test}, standard error {Amounts.Print(test.StandardError * 100, 1)} points");
        // end example
    }
}
