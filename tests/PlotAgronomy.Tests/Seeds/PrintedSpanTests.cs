using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Which of the printed figures speak, and what is made of those that do.</summary>
public class PrintedSpanTests
{
    private static CropKind With(params string[] more) =>
        PublishedKinds.From(KindFile.Read(CsvTable.Parse(MyClover.File, string.Join('\n', MyClover.Names.Concat(more).Prepend(MyClover.Header)))));

    private static string Rate(string method, string purpose, double low, double high, string source, string status = "read", string note = "", string unit = "lb/ac") =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"full-rate,{method},{purpose},,{low},{high},{unit},{note},{source},page,{status}");

    private static (double Low, double Full, double High) Pounds(PureLiveSeedRateRange range) =>
        (range.Low.PoundsPerAcre, range.Full.PoundsPerAcre, range.High.PoundsPerAcre);

    private static PureLiveSeedRateRange Broadcast(params string[] rows) => With(rows).FullRange(SowingMethod.Broadcast);

    [Fact]
    public void Memory_widens_nothing_and_speaks_only_where_nothing_was_read()
    {
        string remembered = Rate("broadcast", "", 1, 90, "KIND-EXT", "memory");
        Assert.Equal((10, 10, 12), Pounds(Broadcast(remembered, Rate("broadcast", "forage", 10, 12, "KIND-WVU"))));
        var alone = With(remembered);
        Assert.Equal((1, 1, 90), Pounds(alone.FullRange(SowingMethod.Broadcast)));
        Assert.Equal(DataStatus.Memory, alone.Rates!.BroadcastEvidence.Status);
        Assert.Equal(0, alone.FullRange(SowingMethod.Broadcast).Publications);
    }

    [Fact]
    public void Plots_and_forage_go_before_cover_crops_and_those_before_practice()
    {
        string cover = Rate("broadcast", "cover-crop", 30, 40, "KIND-UMN");
        string practice = Rate("broadcast", "plot", 1, 50, "PRACTICE", "practice");
        Assert.Equal((10, 10, 15), Pounds(Broadcast(cover, practice, Rate("broadcast", "plot", 10, 15, "KIND-AL-DCNR"))));
        Assert.Equal((30, 30, 40), Pounds(Broadcast(cover, practice)));
        Assert.Equal((1, 1, 50), Pounds(Broadcast(practice, Rate("broadcast", "", 2, 3, "KIND-EXT", "memory"))));
    }

    [Fact]
    public void A_rate_without_a_method_speaks_where_none_for_plots_and_forage_names_it()
    {
        string any = Rate("any", "forage", 20, 30, "KIND-WVU");
        Assert.Equal((20, 20, 30), Pounds(Broadcast(any, Rate("broadcast", "cover-crop", 50, 60, "KIND-UMN"))));
        Assert.Equal((8, 8, 8), Pounds(Broadcast(any, Rate("broadcast", "plot", 8, 8, "KIND-AL-DCNR"))));
        Assert.Equal(20, With(any).FullRange(SowingMethod.Drilled).Low.PoundsPerAcre);
    }

    [Fact]
    public void What_is_set_aside_is_kept_and_does_not_speak()
    {
        var range = Broadcast(Rate("broadcast", "plot", 40, 60, "KIND-AL-DCNR", note: "aside: an outlier"), Rate("broadcast", "forage", 15, 20, "KIND-WVU"));
        Assert.Equal((15, 15, 20), Pounds(range));
        Assert.Equal(1, range.Publications);
    }

    [Fact]
    public void Three_publications_on_plots_and_forage_give_their_median()
    {
        string[] three =
        [
            Rate("broadcast", "plot", 10, 10, "KIND-AL-DCNR"),
            Rate("broadcast", "forage", 12, 20, "KIND-WVU"),
            Rate("broadcast", "forage", 30, 30, "KIND-UGA-RED"),
        ];
        Assert.Equal((10, 16, 30), Pounds(Broadcast(three)));
        Assert.Equal((10, 10, 20), Pounds(Broadcast(three[..2])));
        // Of four the lower of the two in the middle: no average of two institutions.
        Assert.Equal((10, 16, 40), Pounds(Broadcast([.. three, Rate("broadcast", "plot", 40, 40, "KIND-MSU-M1591")])));
        // Two rows of one publication are one voice.
        Assert.Equal((10, 10, 22), Pounds(Broadcast([.. three[..2], Rate("broadcast", "forage", 22, 22, "KIND-WVU")])));
    }

    [Fact]
    public void Seed_as_bought_is_told_apart_from_living_seed()
    {
        var range = Broadcast(
            Rate("broadcast", "plot", 10, 10, "KIND-AL-DCNR"),
            Rate("broadcast", "forage", 12, 12, "KIND-WVU", unit: "lb-pls/ac")
        );
        Assert.Equal((2, 1), (range.Publications, range.InBulk));
    }

    [Fact]
    public void One_secondary_row_makes_the_span_secondary()
    {
        var kind = With(Rate("broadcast", "plot", 10, 10, "KIND-AL-DCNR"), Rate("broadcast", "forage", 12, 12, "KIND-WVU", "secondary"));
        Assert.Equal(DataStatus.Secondary, kind.Rates!.BroadcastEvidence.Status);
        Assert.Equal("KIND-AL-DCNR 10; KIND-WVU 12", kind.Rates.BroadcastEvidence.Locator);
    }

    [Fact]
    public void Spread_seed_takes_no_less_than_drilled_seed()
    {
        string drilled = Rate("drilled", "forage", 45, 45, "KIND-WVU");
        Assert.Equal((40, 45, 90), Pounds(Broadcast(drilled, Rate("broadcast", "plot", 40, 90, "KIND-AL-DCNR"))));
        Assert.Equal((20, 30, 30), Pounds(Broadcast(drilled, Rate("broadcast", "plot", 20, 30, "KIND-AL-DCNR"))));
    }

    /// <summary>SEED-S57 and SEED-S58: at least as much on frozen ground, up to a tenth more. Practice: 1.5 rolled over 1.25 covered.</summary>
    [Fact]
    public void Each_way_of_sowing_has_a_rate_of_its_own()
    {
        var kind = With(Rate("broadcast", "plot", 10, 20, "KIND-AL-DCNR"), Rate("drilled", "plot", 8, 8, "KIND-AL-DCNR"));
        Assert.Equal((10, 10, 20), Pounds(kind.FullRange(SowingMethod.Broadcast)));
        Assert.Equal((8, 8, 8), Pounds(kind.FullRange(SowingMethod.Drilled)));
        var (frostLow, frost, frostHigh) = Pounds(kind.FullRange(SowingMethod.FrostSeeded));
        Assert.Equal((10, 11, 22), (frostLow, Math.Round(frost, 9), Math.Round(frostHigh, 9)));
        var (coverLow, cover, coverHigh) = Pounds(kind.FullRange(SowingMethod.BroadcastUnderCover));
        Assert.Equal((10, 12, 32), (coverLow, Math.Round(cover, 9), Math.Round(coverHigh, 9)));
    }

    /// <summary>Missouri prints 8-10 lb/ac of red clover for frost seeding (SEED-S57), Iowa 20-30 of hairy vetch overseeded.</summary>
    [Fact]
    public void A_rate_that_is_printed_for_the_way_of_sowing_goes_before_a_factor()
    {
        Assert.Equal((8, 8, 10), Pounds(KindCatalog.Standard.Find("medium red clover").FullRange(SowingMethod.FrostSeeded)));
        Assert.Equal((20, 20, 30), Pounds(KindCatalog.Standard.Find("hairy vetch").FullRange(SowingMethod.BroadcastUnderCover)));
        Assert.Equal(
            ["SEED-S57"],
            KindCatalog.Standard.Find("medium red clover").Rates!.EvidenceFor(SowingMethod.FrostSeeded).Sources.Select(s => s.Id)
        );
    }

    public static TheoryData<string> KindsWithACount =>
        [.. KindCatalog.Standard.Kinds.Where(k => k.SeedCount is not null).Select(k => k.Id)];

    [Theory, MemberData(nameof(KindsWithACount))]
    public void One_full_stand_by_its_own_rate_is_never_too_dense(string id)
    {
        var kind = KindCatalog.Standard.Find(id);
        foreach (var method in Enum.GetValues<SowingMethod>().Where(m => kind.Rates!.For(m) is not null))
        {
            var alone = Blend.FromSharesOfFullStand((BlendComponent.FromKind(kind, method), 1));
            Assert.DoesNotContain(CrowdingReport.For(alone).Findings, f => f.Code == "blend-too-dense");
            var twice = Blend.FromSharesOfFullStand((BlendComponent.FromKind(kind, method), 2));
            Assert.Equal(
                twice.LiveSeedsPerSquareFoot > 80 || DensityTarget.For(kind).Any(t => t.Counted == DensityCount.WholeStand && twice.LiveSeedsPerSquareFoot > t.HighPerSquareFoot),
                CrowdingReport.For(twice).Findings.Any(f => f.Code == "blend-too-dense")
            );
        }
    }

    [Fact]
    public void The_working_says_how_many_publications_stand_behind_a_full_rate()
    {
        var plan = PlanFile.Read(File.ReadAllText(Support.Repository.PathOf("samples/data/frost-seeding.json"))).Plan!;
        var lines = plan.Solve().Seed.Value.Kinds.SelectMany(k => k.ShowWork()).Select(l => l.ToString()).ToList();
        Assert.Contains(lines, l => l.Contains("publications print", StringComparison.Ordinal) || l.Contains("1 publication prints", StringComparison.Ordinal));
    }

    [Fact]
    public void Too_few_publications_raise_a_question_and_enough_do_not()
    {
        var winterWheat = KindCatalog.Standard.Find("winter wheat").FullRange(SowingMethod.Broadcast);
        var sweetclover = KindCatalog.Standard.Find("sweetclover").FullRange(SowingMethod.Broadcast);
        Assert.False(winterWheat.IsFromTooFew);
        Assert.True(sweetclover.IsFromTooFew);
        Assert.Equal(sweetclover.Low, sweetclover.Full);
    }

    [Fact]
    public void A_range_of_the_owners_own_is_counted_in_its_middle()
    {
        var mine = PureLiveSeedRateRange.Between(PureLiveSeedRate.BroadcastPoundsPerAcre(4), PureLiveSeedRate.BroadcastPoundsPerAcre(8));
        var kind = KindCatalog.Standard.Find("ladino") with
        {
            Rates = new() { Broadcast = mine, Evidence = Origin.FromUser("my plots") },
        };
        Assert.Equal(6, BlendComponent.FromKind(kind, SowingMethod.Broadcast).FullRate.PoundsPerAcre);
    }

    [Fact]
    public void Months_alone_give_way_to_days_and_memory_to_what_was_read()
    {
        Assert.All(
            KindCatalog.Standard.Kinds,
            k => Assert.All(PlantingRegion.All, r =>
            {
                var read = PlantingWindow.Published(k, r);
                Assert.All(read.Where(w => w.IsMonthsOnly), w => Assert.DoesNotContain(read, o => o.Season == w.Season && !o.IsMonthsOnly && o.Rule == PlantingRule.Window));
                Assert.All(PlantingWindow.FromMemory(k, r), w => Assert.DoesNotContain(read, o => o.Season == w.Season));
            })
        );
    }
}
