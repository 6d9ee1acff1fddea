using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Form of the kind files, and facts of the trade they must agree with.</summary>
public class PublishedKindsTests
{
    private static IReadOnlyList<CropKind> Kinds => KindCatalog.Standard.Kinds;

    [Fact]
    public void There_are_67_kinds_each_with_its_figures()
    {
        Assert.Equal(67, Kinds.Count);
        Assert.All(Kinds, k =>
            Assert.True(
                k
                    is
                {
                    Rates: not null,
                    Depth: not null,
                    Germination: not null,
                    Emergence: not null,
                    Ph: not null,
                    Drainage: not null,
                    Hardiness: not null,
                    Seasons: not null,
                    Caution: not null,
                    Maturity: not null,
                    UsableForage: not null,
                    NutrientNote: not null
                },
                k.Id
            )
        );
        Assert.Equal(["american-jointvetch", "egyptian-wheat"], Kinds.Where(k => k.SeedCount is null).Select(k => k.Id).Order());
    }

    /// <summary>The names are read without the rest of the file.</summary>
    [Fact]
    public void Names_stand_first_in_the_file() =>
        Assert.All(KindFile.All, file => Assert.Equal(file.Figures.Where(o => KindFile.IsName(o.Figure)).Select(o => o.Line), file.Names.Select(o => o.Line)));

    [Fact]
    public void Every_legume_fixes_nitrogen_and_has_an_inoculant_and_no_other_kind_does() =>
        Assert.All(Kinds, k => Assert.Equal((k.IsLegume, k.IsLegume), (k.Nitrogen is not null, k.InoculantGroup is not null)));

    [Fact]
    public void Ranges_run_upwards() => Assert.All(Kinds, k =>
        {
            if (k.SeedCount is { } count)
            {
                Assert.True(
                    count.SeedsPerPoundLow <= count.SeedsPerPound && count.SeedsPerPound <= count.SeedsPerPoundHigh,
                    k.Id
                );
            }

            Assert.True(
                k.Ph is { } ph && ph.MinimumPh <= ph.BestPhFrom && ph.BestPhFrom <= ph.BestPhTo && ph.BestPhTo <= ph.MaximumPh,
                k.Id
            );
            Assert.True(k.Drainage!.Wettest <= k.Drainage.Driest, k.Id);
            Assert.True(
                k.Emergence!.From <= k.Emergence.To
                    && k.UsableForage!.From <= k.UsableForage.To
                    && k.Maturity!.From <= k.Maturity.To,
                k.Id
            );
            double shallow = k.Depth!.Shallowest.Inches;
            double deep = k.Depth.Deepest.Inches;
            Assert.True(shallow >= 0 && shallow <= deep, k.Id);
            double least = k.Germination!.Minimum.DegreesFahrenheit;
            double from = k.Germination.BestFrom.DegreesFahrenheit;
            double to = k.Germination.BestTo.DegreesFahrenheit;
            Assert.True(least <= from && from <= to, k.Id);
        });

    [Fact]
    public void The_season_ratings_say_that_they_are_a_judgement() =>
        Assert.All(Kinds, k => Assert.Equal(DataStatus.Practice, k.Seasons!.Evidence.Status));

    /// <summary>Common practice: who shares a hopper is decided by size of seed.</summary>
    [Theory]
    [InlineData("oats-winter", "crimson-clover")]
    [InlineData("oats-spring", "berseem-clover")]
    [InlineData("oats-winter", "arrowleaf-clover")]
    [InlineData("oats-winter", "subterranean-clover")]
    [InlineData("crimson-clover", "ladino-clover")]
    [InlineData("crimson-clover", "white-dutch-clover")]
    [InlineData("crimson-clover", "alsike-clover")]
    [InlineData("berseem-clover", "ladino-clover")]
    [InlineData("berseem-clover", "white-dutch-clover")]
    [InlineData("berseem-clover", "alsike-clover")]
    [InlineData("subterranean-clover", "ladino-clover")]
    [InlineData("subterranean-clover", "white-dutch-clover")]
    [InlineData("subterranean-clover", "alsike-clover")]
    [InlineData("austrian-winter-pea", "oats-winter")]
    [InlineData("daikon-radish", "purple-top-turnip")]
    public void One_seed_is_larger_than_another(string larger, string smaller)
    {
        var large = KindCatalog.Standard.Find(larger).RequireSeedCount();
        var small = KindCatalog.Standard.Find(smaller).RequireSeedCount();
        Assert.True(large.SeedsPerPoundHigh < small.SeedsPerPoundLow);
    }

    [Fact]
    public void Every_kind_has_a_short_name_of_its_own_that_finds_it()
    {
        Assert.Equal(Kinds.Count, Kinds.Select(k => k.ShortName).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(Kinds, k =>
        {
            Assert.Matches(@"^\p{Lu}[\p{L} -]{2,23}$", k.ShortName);
            Assert.Equal(k.Id, KindCatalog.Standard.Find(k.ShortName).Id);
        });
    }

    [Fact]
    public void A_kind_of_the_users_own_goes_by_its_common_name_or_a_short_one_given()
    {
        var oats = KindCatalog.Standard.Find("spring oats");
        Assert.Equal("Oats (my bin)", (oats with { CommonName = "Oats (my bin)" }).ShortName);
        Assert.Equal("Bin oats", (oats with { CommonName = "Oats (my bin)", ShortName = "Bin oats" }).ShortName);
        Assert.Equal("Spring oats", (oats with { Id = "mine" }).ShortName);
    }

    /// <summary>A figure counts as read only when every number of it was: what a publication says of the kind in words does not help.</summary>
    [Fact]
    public void A_figure_chosen_between_sources_does_not_pass_for_one_that_was_read()
    {
        CropKind ladino = KindCatalog.Standard.Find("ladino"),
            oats = KindCatalog.Standard.Find("spring oats"),
            crimson = KindCatalog.Standard.Find("crimson");
        // Ladino is sown at 4-6 and 8 lb/ac in the publications on plots; crimson at 20-30 and 25.
        Assert.Equal(DataStatus.Read, ladino.Rates!.BroadcastEvidence.Status);
        Assert.Equal((4, 8), (ladino.Rates.Broadcast!.Low.PoundsPerAcre, ladino.Rates.Broadcast.High.PoundsPerAcre));
        Assert.Equal(DataStatus.Read, crimson.Rates!.BroadcastEvidence.Status);
        Assert.Equal((20, 30), (crimson.Rates.Broadcast!.Low.PoundsPerAcre, crimson.Rates.Broadcast.High.PoundsPerAcre));
        // Oats: 80-150 broadcast was read; of the drilled rates two were seen in reports that quote their institutions.
        Assert.Equal(DataStatus.Read, oats.Rates!.EvidenceFor(SowingMethod.Broadcast).Status);
        Assert.Equal(DataStatus.Secondary, oats.Rates.EvidenceFor(SowingMethod.Drilled).Status);
        // Sweetclover's rates were seen in no publication.
        Assert.Equal(DataStatus.Memory, KindCatalog.Standard.Find("sweetclover").Rates!.Evidence.Status);
        // Spring oats die below 17 F, as a reprint of Pennsylvania's advice has it.
        Assert.Equal((DataStatus.Secondary, 17), (oats.Hardiness!.Evidence.Status, Math.Round(oats.Hardiness.LimitTo!.Value.DegreesFahrenheit, 6)));
        // White clover: pH 5.8 and 8.0 were read, and a band of 6.0-7.5 to aim for.
        Assert.Equal(DataStatus.Read, ladino.Ph!.Evidence.Status);
        Assert.Equal((DataStatus.Read, 6, 7.5), (ladino.Ph.BestEvidence.Status, ladino.Ph.BestPhFrom, ladino.Ph.BestPhTo));
        // The group of inoculant was read for lablab, the pounds of nitrogen were not.
        Assert.Equal(DataStatus.Memory, KindCatalog.Standard.Find("lablab").Nitrogen!.Evidence.Status);
        // A user's own rates have one source for every way of sowing.
        Assert.Equal(
            DataStatus.Read,
            new FullStandRates { Evidence = Origin.FromUser("my plots") }
                .EvidenceFor(SowingMethod.Drilled)
                .Status
        );
    }

    [Fact]
    public void Market_classes_of_one_species_are_kinds_of_their_own()
    {
        var ladino = KindCatalog.Standard.Find("ladino");
        var dutch = KindCatalog.Standard.Find("white dutch");
        Assert.Equal(ladino.ScientificName, dutch.ScientificName);
        Assert.NotEqual(ladino.Id, dutch.Id);
    }

    [Theory]
    [InlineData(0.999, SeedSizeClass.VerySmall)]
    [InlineData(1.001, SeedSizeClass.Small)]
    [InlineData(4.999, SeedSizeClass.Small)]
    [InlineData(5.001, SeedSizeClass.Medium)]
    [InlineData(39.99, SeedSizeClass.Medium)]
    [InlineData(40.01, SeedSizeClass.Large)]
    [InlineData(149.9, SeedSizeClass.Large)]
    [InlineData(150.1, SeedSizeClass.VeryLarge)]
    public void The_size_class_follows_the_mass_of_a_seed(double grams, SeedSizeClass expected) =>
        Assert.Equal(expected, SeedCount.FromThousandSeedWeight(Mass.FromGrams(grams)).SizeClass);
}
