using PlotAgronomy.PlanFiles;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

/// <summary>A lot whose seeds the owner counted. An acre has 43,560 square feet, by definition.</summary>
public class CountedLotTests
{
    /// <summary>No publication that is known counts the seed of American jointvetch.</summary>
    private const string Uncounted = "American jointvetch";

    [Fact]
    public void A_kind_that_nobody_counted_is_sown_by_the_lots_own_count()
    {
        var open = Plan(Uncounted, null).Solve();
        Assert.Equal("seed-ask-count", Assert.Single(open.Seed.Questions).Code);
        var sown = Assert.Single(Plan(Uncounted, 62_000).Solve().Seed.Value.Kinds);
        Near.Assert(sown.Part.LiveRate.PoundsPerAcre * 62_000 / 43_560, sown.Part.LiveSeedsPerSquareFoot, 1e-9);
    }

    [Fact]
    public void The_count_is_written_back() =>
        Assert.Equal(62_000, PlanFile.Read(PlanFile.Write(Plan(Uncounted, 62_000))).Plan!.SeedOffers[0].Item.OwnSeedCount!.SeedsPerPound);

    /// <summary>Crimson clover: about 140,000 to 150,000 seeds a pound (USDA NRCS plant guide, read in the kind table).</summary>
    [Theory]
    [InlineData(150_000, false), InlineData(30_000, true), InlineData(1_500_000, true)]
    public void A_count_far_from_what_is_published_is_asked_about(double count, bool isAsked)
    {
        var lot = Plan("crimson clover", count).SeedOffers[0].Item;
        Assert.Equal(isAsked, lot.Cautions(SowingMethod.Broadcast).Any(f => f.Code == "seed-count-unusual"));
    }

    [Theory]
    [InlineData("0"), InlineData("20000001"), InlineData("\"62000\"")]
    public void A_count_that_no_seed_has_is_refused_with_its_field(string count)
    {
        var problem = Assert.Single(PlanFile.Read(Text(Uncounted, count)).Problems);
        Assert.Equal("$.materials.seedLots[0].seedsPerPound", problem.Path);
        Assert.Contains("from 50 to 20000000", problem.Text, StringComparison.Ordinal);
    }

    private static PlotPlan Plan(string kind, double? count) =>
        PlanFile.Read(Text(kind, count is { } known ? FormattableString.Invariant($"{known}") : "\"not stated\"")).Plan!;

    private static string Text(string kind, string count) => $$"""
        {
          "planVersion": 1,
          "method": "tilled-and-packed",
          "plot": { "name": "Alder Strip", "area": "0.5 ac", "use": "browsed" },
          "growing": { "kinds": [ { "kind": "{{kind}}", "shareOfFullStand": 1 } ] },
          "materials": {
            "seedLots": [
              {
                "kind": "{{kind}}", "pureSeed": "97 %", "germination": "82 %", "tested": "2026-05", "package": "10 lb", "price": 40,
                "seedsPerPound": {{count}}
              }
            ]
          }
        }
        """;
}
