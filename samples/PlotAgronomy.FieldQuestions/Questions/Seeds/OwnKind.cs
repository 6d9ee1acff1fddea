using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Seeds;

/// <summary>The co-op cleans a red clover of its own valley, smaller in the seed than the common one. No table knows
/// it.</summary>
internal static class OwnKind
{
    private const string Tag = """
        Kind: Valley red clover
        Pure seed 97.40 %   Inert matter 2.20 %   Other crop 0.20 %   Weed seed 0.20 %
        Germination 78 %    Hard seed 12 %        Test date 06/2026
        """;

    internal static void Answer(TextWriter output)
    {
        var common = KindCatalog.Standard.Find("medium red clover");
        var valley = common with
        {
            Id = "valley-red-clover",
            CommonName = "valley red clover",
            ShortName = "Valley red clover",
            OtherNames = [],
            SeedCount = SeedCount.FromWeighedSample(400, Mass.FromGrams(0.62)),
        };
        var kinds = KindCatalog.Standard.With(valley);
        var read = SeedTag.Read(Tag, kinds);
        if (read.Tag is not { } tag)
        {
            output.WriteLine($"The tag cannot be read: {read}.");
            return;
        }

        output.Warn(read.Findings);

        var lot = SeedLot.FromTag(tag, valley, "co-op");
        var rate = PureLiveSeedRate.BroadcastPoundsPerAcre(10);
        var usual = SeedDensity.FromRate(rate, common.RequireSeedCount());
        var alike = usual.RateOf(valley.RequireSeedCount(), SowingMethod.Broadcast);
        output.WriteLine($"Ten pounds of the common clover lay {Amounts.Print(usual.SeedsPerSquareFoot, 0)} seeds on a "
            + $"square foot; of the valley's, {Amounts.Print(alike.Rate, "lb/ac", 1)} do.");
        output.Tell(RateCheck.Against(valley, alike));
        output.Tell(lot.BulkRate(alike));

        // Half of that under a thin stand of oats: is there room for both?
        var oats = KindShare.FromShare(kinds.Find("winter oats"), 0.4);
        var both = Blend.FromSharesOfFullStand(SowingMethod.Broadcast, KindShare.FromRate(valley, alike * 0.5), oats);
        output.WriteLine($"Half as much under a thin stand of oats: {both.StandTotal}, "
            + $"{Amounts.Print(both.BulkRate, "lb/ac", 0)} in all.");
        output.Warn(both.Findings);
    }
}
