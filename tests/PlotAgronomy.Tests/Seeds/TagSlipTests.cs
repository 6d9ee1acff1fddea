using System.Diagnostics;
using PlotAgronomy.Seeds;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Slips that a tag invites: thousands, totals, fractions, digits of other scripts, far too much text.</summary>
public class TagSlipTests
{
    private const string Vetch = "Kind: Hairy vetch\nPure seed 98%\nInert 2%\nGermination 85%\n";

    // Practice: how counts per pound are printed on tags.
    [Theory]
    [InlineData("Noxious weeds: 1,200 dodder per lb", "dodder 1200")]
    [InlineData("Noxious weeds: dodder 1,200 per lb", "dodder 1200")]
    [InlineData("Noxious weeds: 1 200 dodder per lb", "dodder 1200")]
    [InlineData("Noxious weed seeds per lb: 9 wild onion, dock 1,018; 3 dodder", "wild onion 9; dock 1018; dodder 3")]
    [InlineData("Noxious: 9 dock 18 dodder", "dock 9; dodder 18")]
    [InlineData("NOXIOUS WEED SEED: 36/LB DOCK", "DOCK 36")]
    [InlineData("Noxious weed seeds per lb: 12", "a weed not named 12")]
    [InlineData("Noxious weeds: 0 dock", "")]
    [InlineData("Noxious weed seed: 0.10 %", "")]
    public void Noxious_counts_keep_their_thousands_and_their_names(string line, string weeds)
    {
        var tag = SeedTag.Read(Vetch + line).Tag!;
        Assert.Equal(weeds, string.Join("; ", tag.Noxious.Select(n => FormattableString.Invariant($"{n.Name} {n.SeedsPerPound}"))));
    }

    // Computed: 90 = 80 + 10. The words are those of state seed law.
    [Theory]
    [InlineData("Total germination and hard seed 90%")]
    [InlineData("TOTAL GERM. & HARD SEED: 90%")]
    [InlineData("Total germination + hard 90%")]
    [InlineData("Total germination, hard and dormant seed 90%")]
    [InlineData("Germination and hard seed 90%")]
    [InlineData("Total viable seed 90%")]
    public void The_total_of_germination_and_hard_seed_is_read_as_the_law_words_it(string total)
    {
        var both = SeedTag.Read($"Kind: Crimson clover\nPure seed 98%\nInert 2%\nGermination 80%\nHard seed 10%\n{total}");
        Assert.Empty(both.Problems);
        Assert.Equal(80, both.Tag!.Components[0].Analysis.Germination.Percent, 1e-9);
        Assert.Equal(10, both.Tag.Components[0].Analysis.HardSeed.Percent, 1e-9);
        var alone = SeedTag.Read($"Kind: Crimson clover\nPure seed 98%\nInert 2%\nGermination 80%\n{total}");
        Assert.Equal(10, alone.Tag!.Components[0].Analysis.HardSeed.Percent, 1e-9);
    }

    [Theory]
    [InlineData("Kind: Alfalfa\nPure seed 98%\nInert 2%\nGermination 0.90", "90 % meant")]
    [InlineData("Kind: Alfalfa\nPure seed .98\nInert .02\nGermination 90%", "98 % meant")]
    [InlineData("Kind: Alfalfa\nPure seed 98%\nInert 2%\nTotal germination 0.9", "90 % meant")]
    public void A_part_of_one_where_a_percentage_belongs_is_asked_back(string text, string problem)
    {
        var reading = SeedTag.Read(text);
        Assert.Null(reading.Tag);
        Assert.Contains(reading.Problems, p => p.Contains(problem, StringComparison.Ordinal));
    }

    [Fact]
    public void A_kind_of_which_a_mixture_holds_little_is_not_asked_about()
    {
        var reading = SeedTag.Read("98.20% Winter oats 90%\n0.80% Crimson clover 85%\n1.00% inert");
        Assert.Empty(reading.Problems);
        Assert.Equal(0.8, reading.Tag!.Components[1].Analysis.PureSeed.Percent, 1e-9);
    }

    [Fact]
    public void Digits_of_other_scripts_and_years_beyond_the_calendar_are_no_exceptions()
    {
        var wide = SeedTag.Read("Kind: Hairy vetch\nPure seed 98%\nInert 2%\nGermination \uFF18\uFF15 \uFF05");
        Assert.Equal(85, wide.Tag!.Components[0].Analysis.Germination.Percent, 1e-9);
        Assert.Null(SeedTag.Read(Vetch + "Tested 12/9999").Tag?.TestMonth);
    }

    [Theory]
    [InlineData("Net wt 93.7 lb; ")]
    [InlineData("Noxious: aa bb ")]
    [InlineData("aa bb ")]
    [InlineData("a")]
    [InlineData("germ and hard ")]
    [InlineData("     ")]
    public void A_text_too_long_for_a_tag_is_a_problem_and_the_longest_is_read_at_once(string part)
    {
        string line = string.Concat(Enumerable.Repeat(part, 1000 / part.Length));
        string longest = string.Join('\n', Enumerable.Repeat(line, 4));
        _ = SeedTag.Read(Vetch);
        var watch = Stopwatch.StartNew();
        _ = SeedTag.Read(longest);
        Assert.InRange(watch.Elapsed.TotalSeconds, 0, 30);
        Assert.Contains("characters", Assert.Single(SeedTag.Read(longest + longest).Problems), StringComparison.Ordinal);
        Assert.Contains("A line has", Assert.Single(SeedTag.Read(new string('a', 1001)).Problems), StringComparison.Ordinal);
    }

    // Computed: 62.00 + 33.50 + 1.20 + 2.80 + 0.10 = 99.60.
    [Fact]
    public void Coating_above_the_inert_matter_stands_beside_it_whatever_the_parts_sum_to()
    {
        var tag = SeedTag.Read("Kind: Ladino clover\nPure seed 62.00%\nCoating 33.50%\nCrop 1.20%\nInert 2.80%\nWeed 0.10%\nGerm 90%").Tag!;
        Assert.Equal(99.60, tag.SumPercent, 1e-9);
        Assert.Equal(0.40, tag.UnexplainedPercent, 1e-9);
    }

    [Fact]
    public void A_name_of_several_kinds_beside_a_state_lists_them()
    {
        var reading = SeedTag.Read("35.00% Oats 90% MN\n65.00% inert");
        Assert.Contains(reading.Problems, p => p.Contains("may be any of", StringComparison.Ordinal) && p.Contains("oats-winter", StringComparison.Ordinal));
    }

    // Computed: 0.12 / (0.95 x 0.85) = 0.148607.
    [Fact]
    public void A_lot_with_a_tetrazolium_test_alone_has_a_bulk_rate()
    {
        var untested = SeedAnalysis.FromFractions(Fraction.FromPercent(95), Fraction.Zero);
        var answer = PureLiveSeed.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(0.12), untested, ViabilityRule.Tetrazolium(Fraction.FromPercent(85)));
        Assert.Equal(0.148607, answer.Bulk.PoundsPerAcre, 1e-6);
        Assert.Null(answer.CountingHardAndDormant);
        Assert.Null(answer.CountingGerminationOnly);
        Assert.NotEmpty(answer.ShowWork());
        Assert.All(answer.Findings, f => Assert.NotEmpty(f.Text));
    }
}
