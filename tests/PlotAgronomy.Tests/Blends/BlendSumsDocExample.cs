using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Blends;

/// <summary>The sums people look for, as the page shows them.</summary>
public class BlendSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/blends.md", "tests/PlotAgronomy.Tests/Blends/BlendSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // A lot in hand, for a full stand of your own experience: 60 lb/ac of living seed.
        var wheat = new SeedLot
        {
            Label = "elevator wheat",
            Kind = KindCatalog.Standard.Find("winter-wheat"),
            Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(85)),
        };
        var clover = BlendComponent.FromKind(KindCatalog.Standard.Find("crimson-clover"), SowingMethod.Broadcast);
        var blend = Blend.FromSharesOfFullStand(
            (BlendComponent.FromLot(wheat, PureLiveSeedRate.BroadcastPoundsPerAcre(60)), 0.05), (clover, 0.02));
        output.WriteLine($"{Amounts.Print(blend.EmptySquareFeet, 2)} of the square feet get no seed");

        // A mixer holds 50 lb: what goes in?
        foreach (var line in blend.WeighBatch(BulkSeedMass.FromPounds(50)).Lines)
        {
            output.WriteLine(line);
        }
        // end example
    }
}
