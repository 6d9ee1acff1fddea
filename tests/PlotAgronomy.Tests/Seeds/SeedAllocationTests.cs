using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>A call that is asked for numbers makes no text.</summary>
public class SeedAllocationTests
{
    private static readonly CropKind Ladino = KindCatalog.Standard.Find("ladino clover");
    private static readonly PureLiveSeedRate Rate = PureLiveSeedRate.BroadcastPoundsPerAcre(8);
    private static readonly SeedAnalysis Tag = SeedAnalysis.FromFractions(Percent(65), Percent(55), Percent(15), coating: Percent(34), seedsTested: 400);
    private static readonly Offer<SeedLot>[] Lots = [Lot("a", 2m), Lot("b", 3m)];

    [Fact]
    public void A_bulk_rate_without_text_allocates_the_result_alone() =>
        Assert.InRange(Allocations.BytesOf(() => PureLiveSeed.BulkRate(Rate, Tag, ViabilityRule.GerminationAndHard, Ladino)), 1, 149);

    [Fact]
    public void The_checks_of_seed_without_text_allocate_little()
    {
        Assert.InRange(Allocations.BytesOf(() => RateCheck.Against(Ladino, Rate)), 1, 150);
        Assert.InRange(Allocations.BytesOf(() => GerminationTolerance.Compare(Percent(90), Percent(84))), 1, 75);
        Assert.InRange(Allocations.BytesOf(() => InoculantNeed.For(Ladino, BulkSeedMass.FromPounds(5))), 1, 60);
        var test = GerminationTest.FromCount(40, 100);
        Assert.InRange(Allocations.BytesOf(() => HomeTestVerdict.Compare(Tag, test)), 1, 60);
    }

    [Fact]
    public void A_ranking_of_two_lots_without_text_allocates_little() =>
        Assert.InRange(Allocations.BytesOf(() => SeedLotComparison.Rank(Lots, Rate)), 1, 2_400);

    private static Fraction Percent(double percent) => Fraction.FromPercent(percent);

    private static Offer<SeedLot> Lot(string label, decimal price) => Offer.ByThePound(new SeedLot { Label = label, Kind = Ladino, Analysis = Tag }, price);
}
