using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

public class SeedsDocTests
{
    [Fact]
    public void The_page_shows_what_the_code_does() => DocExample.AssertCurrent("docs/seeds.md", "tests/PlotAgronomy.Tests/Seeds/SeedsDocTests.cs", Example);

    [Fact]
    public void The_page_lists_every_finding_of_the_room()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/seeds.md"));
        Assert.Empty(PlotAgronomy.Reference.FindingCatalog.Codes.Where(c => c.StartsWith("seed-", StringComparison.Ordinal) && !page.Contains($"`{c}`", StringComparison.Ordinal)));
    }

    private static void Example(TextWriter output)
    {
        // begin example
        var reading = SeedTag.Read("""
            Kind: Crimson clover   Variety: not stated
            Pure seed 65.00%    Inert matter 34.20%
            Coating 33.50%      Other crop 0.50%     Weed seed 0.30%
            Germination 75%     Hard seed 10%        Test date 03/2025
            """);
        var coated = SeedLot.FromTag(reading.Tag!, reading.Tag!.Components[0], "coated");
        var bare = new SeedLot
        {
            Label = "bare",
            Kind = coated.Kind,
            Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(85)),
        };

        var stand = PureLiveSeedRate.BroadcastPoundsPerAcre(20);
        foreach (var lot in SeedLotComparison.Rank([Offer.ByThePound(coated, 1.90m), Offer.ByThePound(bare, 2.60m)], stand).Ranked)
        {
            output.WriteLine($"{lot.Place}. {lot.Lot.Label}: {lot.Seeding.Bulk}, {Currency.FromCode("USD").Print(lot.CostPerAcre)} per acre");
        }

        var seeding = coated.BulkRate(stand);
        foreach (var line in seeding.ShowWork())
        {
            output.WriteLine(line);
        }

        foreach (var finding in seeding.Findings)
        {
            output.WriteLine(finding);
        }
        // end example
    }
}
