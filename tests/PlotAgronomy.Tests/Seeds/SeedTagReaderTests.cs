using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

public class SeedTagReaderTests
{
    [Fact]
    public void Reads_one_part_a_line_with_its_label_first()
    {
        var reading = SeedTag.Read("""
            Kind: Crimson clover   Variety: not stated
            PURE SEED: 65.00%
            COATING MATERIAL: 33.50%
            INERT MATTER: 34.20%
            OTHER CROP SEED: 0.50%
            WEED SEED: 0.30%
            NOXIOUS WEED SEED: NONE FOUND
            GERMINATION: 75%   HARD SEED: 10%
            Test date: 03/2025
            Origin: OR
            LOT NO. CC-1187
            NET WT. 50 LBS (22.68 KG)
            """);

        Assert.Empty(reading.Problems);
        var tag = reading.Tag!;
        var component = Assert.Single(tag.Components);
        Assert.Equal("crimson-clover", component.Kind.Id);
        Assert.Equal("65 %", component.Analysis.PureSeed.ToString());
        Assert.Equal("75 %", component.Analysis.Germination.ToString());
        Assert.Equal("10 %", component.Analysis.HardSeed.ToString());
        Assert.Equal("33.5 %", component.Analysis.Coating.ToString());
        Assert.Equal(100, tag.SumPercent, 1e-9);
        Assert.Equal("2025-03", tag.TestMonth.ToString());
        Assert.Equal("CC-1187", tag.LotNumber);
        Assert.Equal("OR", component.Origin);
        double pounds = tag.NetWeight!.Value.Pounds;
        Assert.Equal(50, pounds, 1e-9);
        Assert.Empty(tag.Noxious);
        Assert.DoesNotContain(reading.Findings, f => f.Code.StartsWith("seed-tag", StringComparison.Ordinal));
    }

    [Fact]
    public void Reads_a_table_of_components_with_a_header()
    {
        var reading = SeedTag.Read("""
            PURE SEED  KIND            VARIETY  GERM  HARD  ORIGIN
            46.20%     Winter oats     VNS      90%
            29.40%     Winter wheat    VNS      90%
            14.70%     Winter pea      VNS      85%
            4.90%      Crimson clover  VNS      75%   15%
            1.96%      Purple top turnip VNS    90%
            1.50%  OTHER CROP SEED
            1.20%  INERT MATTER
            0.14%  WEED SEED
            TESTED: JUNE 2025    NET WEIGHT 50 LB
            """);

        Assert.Empty(reading.Problems);
        var tag = reading.Tag!;
        Assert.Equal(["oats-winter", "winter-wheat", "austrian-winter-pea", "crimson-clover", "purple-top-turnip"], tag.Components.Select(c => c.Kind.Id));
        Assert.Equal(15, tag.Components[3].Analysis.HardSeed.Percent, 1e-9);
        Assert.Equal(100, tag.SumPercent, 1e-9);
        Assert.Equal("2025-06", tag.OldestTest.ToString());
    }

    [Fact]
    public void A_header_gives_the_order_of_the_columns()
    {
        var reading = SeedTag.Read("""
            GERM   HARD   PURE SEED   KIND
            85%    5%     49.00%      Ladino clover
            80%    10%    49.00%      Alsike clover
            Inert 2.00%
            """);
        Assert.Equal([85, 80], reading.Tag!.Components.Select(c => Math.Round(c.Analysis.Germination.Percent)));
        Assert.Equal([5, 10], reading.Tag.Components.Select(c => Math.Round(c.Analysis.HardSeed.Percent)));
        Assert.Equal(100, reading.Tag.SumPercent, 1e-9);
        Assert.DoesNotContain(reading.Findings, f => f.Code == "seed-tag-assumption");
    }

    [Fact]
    public void Rows_with_their_own_dates_and_origins_give_the_oldest_test()
    {
        var reading = SeedTag.Read("""
            PURE SEED  KIND  GERM  TEST DATE  ORIGIN
            60.00% Winter oats 90% 06/25 SD
            38.50% Winter wheat 92% 4/2025 KS
            1.50% Inert matter
            """);
        Assert.Empty(reading.Problems);
        Assert.Equal(["2025-06", "2025-04"], reading.Tag!.Components.Select(c => c.TestMonth.ToString()));
        Assert.Equal("2025-04", reading.Tag.OldestTest.ToString());
        Assert.Equal(["SD", "KS"], reading.Tag.Components.Select(c => c.Variety));
        Assert.Contains(reading.Findings, f => f.Text.Contains("is a variety or an origin", StringComparison.Ordinal));
    }

    [Fact]
    public void Addresses_weights_and_last_days_do_not_disturb()
    {
        var reading = SeedTag.Read("""
            PURE SEED 98.00% CRIMSON CLOVER VARIETY: MEADOW GERM. 85.00% HARD 5.00% ORIGIN: OR
            INERT 1.50%  CROP 0.30%  WEED 0.20%
            12 Field Road, Anytown
            Sell by 03/2026
            50 LBS
            """);
        Assert.Empty(reading.Problems);
        var component = Assert.Single(reading.Tag!.Components);
        Assert.Equal(("crimson-clover", "MEADOW", "OR"), (component.Kind.Id, component.Variety, component.Origin));
        Assert.Equal(100, reading.Tag.SumPercent, 1e-9);
        double pounds = reading.Tag.NetWeight!.Value.Pounds;
        Assert.Equal(50, pounds, 1e-9);
        Assert.Equal(2, reading.Findings.Count(f => f.Code == "seed-tag-line-aside"));
    }

    [Fact]
    public void A_table_without_a_header_is_read_with_its_assumption_said()
    {
        var reading = SeedTag.Read("98.50 Hairy vetch 80 95\n0.50 crop\n0.90 inert\n0.10 weed");
        var analysis = reading.Tag!.Components[0].Analysis;
        Assert.Equal(80, analysis.Germination.Percent, 1e-9);
        Assert.Equal(15, analysis.HardSeed.Percent, 1e-9);
        Assert.Contains(reading.Findings, f => f.Code == "seed-tag-assumption" && f.Text.Contains("total germination", StringComparison.Ordinal));
        Assert.Contains(reading.Findings, f => f.Code == "seed-tag-assumption" && f.Text.Contains("less germination: 15 %", StringComparison.Ordinal));
    }

    [Fact]
    public void Reads_everything_on_one_line()
    {
        var reading = SeedTag.Read("Alsike clover 98.00% pure seed, 85% germination, 5% hard seed, 1.20% inert matter, 0.60% other crop, 0.20% weed seed, tested 10/25");
        Assert.Empty(reading.Problems);
        Assert.Equal("alsike-clover", reading.Tag!.Components[0].Kind.Id);
        Assert.Equal(100, reading.Tag.SumPercent, 1e-9);
        Assert.Equal("2025-10", reading.Tag.TestMonth.ToString());
        Assert.Contains(reading.Findings, f => f.Text.Contains("'10/25' is taken as a test of 2025-10", StringComparison.Ordinal));
    }

    [Fact]
    public void A_germination_that_holds_the_hard_seed_is_found_out_by_its_total()
    {
        var reading = SeedTag.Read("Kind: Alfalfa\nPure seed 99.00%\nGermination 92%\nHard seed 8%\nTotal germination 92%\nInert 1.00%");
        Assert.Equal(84, reading.Tag!.Components[0].Analysis.Germination.Percent, 1e-9);
        Assert.Contains(reading.Findings, f => f.Text.Contains("already counts", StringComparison.Ordinal));
    }

    [Fact]
    public void More_than_all_seeds_is_a_problem_not_an_exception()
    {
        var reading = SeedTag.Read("Kind: Alfalfa\nPure seed 99.00%\nGermination 95%\nHard seed 8%\nInert 1.00%");
        Assert.Null(reading.Tag);
        Assert.Contains("more than all its seeds", Assert.Single(reading.Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Coating_listed_beside_the_inert_matter_is_counted_into_it_when_only_so_the_sum_is_right()
    {
        var reading = SeedTag.Read("Kind: Ladino clover\nPure seed 64.50%\nCoating 34.00%\nInert 1.00%\nCrop 0.40%\nWeed 0.10%\nGerm 85%\nHard 5%");
        Assert.Equal(35, reading.Tag!.Inert.Percent, 1e-9);
        Assert.Equal(100, reading.Tag.SumPercent, 1e-9);
        Assert.Contains(reading.Findings, f => f.Text.Contains("stands beside the inert matter", StringComparison.Ordinal));
    }

    [Fact]
    public void A_missing_part_is_named()
    {
        var reading = SeedTag.Read("Kind: mammoth red clover\nPure seed 60.0%\nCoating 35%\nInert 35%\nCrop 0.35%\nWeed 0.15%\nGermination 90%");
        Assert.Contains(reading.Findings, f => f.Code == "seed-tag-part-missing" && f.Text.Contains("4.5 %", StringComparison.Ordinal));
        Assert.Equal(60, reading.Tag!.Components[0].Analysis.PureSeed.Percent, 1e-9);
    }

    [Fact]
    public void A_name_that_fits_several_kinds_is_a_problem_that_lists_them()
    {
        var reading = SeedTag.Read("Kind: Red clover\nPure seed 98%\nGerm 90%\nInert 2%");
        Assert.Null(reading.Tag);
        Assert.Contains(reading.Problems, p => p.Contains("medium-red-clover", StringComparison.Ordinal) && p.Contains("mammoth-red-clover", StringComparison.Ordinal));
    }

    [Fact]
    public void A_variety_beside_the_kind_is_taken_apart()
    {
        var reading = SeedTag.Read("97.00% Meadowlark crimson clover germ 85%\n3.00% inert");
        Assert.Equal("Meadowlark", reading.Tag!.Components[0].Variety);
        Assert.Equal("crimson-clover", reading.Tag.Components[0].Kind.Id);
    }

    [Fact]
    public void Noxious_weeds_treatment_and_inoculant_are_seen()
    {
        var reading = SeedTag.Read("Kind: Hairy vetch\nPure seed 98%\nInert 2%\nGermination 85%\nNoxious weeds per lb: 9 wild onion, dock 18\nThis seed has been treated with a fungicide\nInoculant expires 06/2026");
        Assert.Equal([("wild onion", 9.0), ("dock", 18.0)], reading.Tag!.Noxious.Select(n => (n.Name, n.SeedsPerPound)));
        Assert.True(reading.Tag.IsTreated);
        Assert.True(reading.Tag.IsPreinoculated);
        Assert.Contains(reading.Findings, f => f.Code == "seed-treated");
        Assert.Equal(2, reading.Findings.Count(f => f.Code == "seed-noxious"));
    }

    [Theory]
    [InlineData("Pure seed 98%\nGerm 90%", "names no kind")]
    [InlineData("Kind: alfalfa\nGerm 90%", "No pure seed")]
    [InlineData("Kind: alfalfa\nPure seed 98%", "No germination")]
    [InlineData("Kind: alfalfa\nPure seed 980%\nGerm 90%", "more than 100")]
    [InlineData("Kind: alfalfa\nPure seed 98%\nPure live germ 90 80 70", "do not pair off")]
    [InlineData("Kind: alfalfa\nPure seed 98%\nGerm 90%\nGerm 80%", "stands twice")]
    [InlineData("Kind: moonweed\nPure seed 98%\nGerm 90%", "No kind is called")]
    [InlineData("", "names no kind")]
    public void What_cannot_be_read_is_said(string text, string problem)
    {
        var reading = SeedTag.Read(text);
        Assert.Null(reading.Tag);
        Assert.Contains(reading.Problems, p => p.Contains(problem, StringComparison.Ordinal));
    }

    [Fact]
    public void Lines_without_meaning_are_left_aside_and_said()
    {
        var reading = SeedTag.Read("Packed for the lower field\nKind: alfalfa\nPure seed 98%\nInert 2%\nGerm 90%");
        Assert.NotNull(reading.Tag);
        Assert.Contains(reading.Findings, f => f.Code == "seed-tag-line-aside");
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void A_tag_reads_the_same_in_every_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        var reading = SeedTag.Read("KIND: INDIANGRASS\nPURE SEED 55.25%\nINERT 44.75%\nGERMINATION 40.5%\nDORMANT 30%");
        Assert.Equal(55.25, reading.Tag!.Components[0].Analysis.PureSeed.Percent, 1e-9);
        Assert.Equal("indiangrass", reading.Tag.Components[0].Kind.Id);
        Assert.Equal(30, reading.Tag.Components[0].Analysis.DormantSeed.Percent, 1e-9);
    }

    [Fact]
    public void A_printed_pure_live_seed_is_checked_and_a_total_of_the_bag_is_left_aside()
    {
        const string Native = "Kind: Switchgrass\nPure seed 98.00%\nInert 2.00%\nGermination 40%\nDormant 50%\nTotal 100.00%\n";
        var right = SeedTag.Read(Native + "PLS 88.2%");
        Assert.Equal(50, right.Tag!.Components[0].Analysis.DormantSeed.Percent, 1e-9);
        Assert.Equal(0, right.Tag.Components[0].Analysis.HardSeed.Percent, 1e-9);
        Assert.DoesNotContain(right.Findings, f => f.Code == "seed-tag-pure-live-differs");
        var wrong = SeedTag.Read(Native + "Pure live seed 80%");
        Assert.Contains(wrong.Findings, f => f.Code == "seed-tag-pure-live-differs");
        Assert.Contains(wrong.Findings, f => f.Code == "seed-tag-line-aside");
    }

    [Fact]
    public void Coated_as_a_word_beside_the_kind_is_no_part()
    {
        var reading = SeedTag.Read("65.00% Coated crimson clover 85%\n34.00% coating material\n35.00% inert matter");
        Assert.Empty(reading.Problems);
        Assert.Equal("crimson-clover", reading.Tag!.Components[0].Kind.Id);
        Assert.Equal(34, reading.Tag.Coating.Percent, 1e-9);
    }

    [Fact]
    public void A_decimal_comma_is_read_and_said()
    {
        var reading = SeedTag.Read("Kind: alfalfa\nPure seed 98,50%\nInert 1.50%\nGerm 90%");
        Assert.Equal(98.5, reading.Tag!.Components[0].Analysis.PureSeed.Percent, 1e-9);
        Assert.Contains(reading.Findings, f => f.Text.Contains("decimal comma", StringComparison.Ordinal));
    }
}
