using PlotAgronomy.Seeds;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class SizeGroupsTests
{
    private static readonly PassKind Rye = PassKind.FromSeedCount("rye", 18_160, density: Density.FromKilogramsPerCubicMeter(1250), sowingDepth: Length.FromInches(1.5));
    private static readonly PassKind Pea = PassKind.FromSeedCount("pea", 4000, density: Density.FromKilogramsPerCubicMeter(1350), sowingDepth: Length.FromInches(2));
    private static readonly PassKind WhiteClover = PassKind.FromSeedCount("white clover", 776_000, density: Density.FromKilogramsPerCubicMeter(1250), sowingDepth: Length.FromInches(0.25));
    private static readonly PassKind Turnip = PassKind.FromSeedCount("turnip", 220_000, density: Density.FromKilogramsPerCubicMeter(1100), sowingDepth: Length.FromInches(0.5));
    private static readonly PassKind Bluestem = PassKind.FromSeedCount("big bluestem", 144_240, sowingDepth: Length.FromInches(0.25), chaffy: true);

    [Fact]
    public void Grain_goes_first_and_is_covered_small_seed_follows_and_is_pressed()
    {
        var plan = SizeGrouping.Arrange([WhiteClover, Rye, Turnip, Pea]);
        Assert.Equal(["pea", "rye"], plan.Groups[0].Kinds.Select(k => k.Name));
        Assert.Equal(["turnip", "white clover"], plan.Groups[1].Kinds.Select(k => k.Name));
        Assert.Equal([SeedingAction.Spread, SeedingAction.Cover, SeedingAction.Spread, SeedingAction.Press], plan.Steps.Select(s => s.Action));
        Assert.Contains(plan.Findings, f => f.Code == "spread-separate-passes");
        Assert.Contains(plan.Findings, f => f.Code == "spread-size-from-weight");
    }

    [Fact]
    public void Chaffy_seed_never_shares_with_smooth_seed_of_the_same_size()
    {
        var plan = SizeGrouping.Arrange([Turnip, Bluestem]);
        Assert.Equal(2, plan.Groups.Length);
        Assert.Contains(plan.Findings, f => f.Code == "spread-chaffy-apart");
    }

    [Fact]
    public void The_density_rule_splits_what_the_diameter_rule_leaves_together()
    {
        Assert.Single(SizeGrouping.Arrange([Rye, Pea]).Groups);
        Assert.Equal(2, SizeGrouping.Arrange([Rye, Pea], SizeRule.DensityTimesDiameter).Groups.Length);
        Assert.Contains(SizeGrouping.Arrange([Rye, Pea]).Findings, f => f.Code == "spread-throw-unlike");
        Assert.Contains("big bluestem", Assert.Throws<ArgumentException>(() => SizeGrouping.Arrange([Bluestem], SizeRule.DensityTimesDiameter)).Message, StringComparison.Ordinal);
    }

    [Theory, InlineData(1.9999, 1), InlineData(2.0, 1), InlineData(2.0001, 2)]
    public void Twice_the_diameter_is_still_one_pass(double ratio, int passes) =>
        Assert.Equal(passes, SizeGrouping.Arrange([
            PassKind.FromSeedCount("small", 100_000, Length.FromMillimeters(1.7)),
            PassKind.FromSeedCount("large", 10_000, Length.FromMillimeters(1.7 * ratio))]).Groups.Length);

    [Theory, InlineData(8.0, 1), InlineData(8.001, 2)]
    public void Eight_times_the_weight_is_twice_the_diameter(double ratio, int passes) =>
        Assert.Equal(passes, SizeGrouping.Arrange([PassKind.FromSeedCount("small", 10_000 * ratio), PassKind.FromSeedCount("large", 10_000)]).Groups.Length);

    [Fact]
    public void One_missing_diameter_puts_all_kinds_on_the_scale_of_weights()
    {
        var measured = PassKind.FromSeedCount("measured", 10_000, Length.FromMillimeters(10));
        var unmeasured = PassKind.FromSeedCount("unmeasured", 80_000);
        Assert.Equal(2, Assert.Single(SizeGrouping.Arrange([measured, unmeasured]).Groups).LargestToSmallest, 1e-12);
    }

    [Theory, InlineData(0.5, false), InlineData(0.501, true), InlineData(0.499, false)]
    public void Seed_sown_deeper_than_half_an_inch_is_covered(double inches, bool covered) =>
        Assert.Equal(covered, SizeGrouping.Arrange([PassKind.FromSeedCount("kind", 10_000, sowingDepth: Length.FromInches(inches))]).Groups[0].SownBeforeCovering);

    [Theory, InlineData(0.499, 2), InlineData(0.5, 2), InlineData(0.501, 1)]
    public void Seed_that_is_covered_goes_apart_from_seed_that_is_pressed(double inches, int passes)
    {
        var radish = PassKind.FromSeedCount("radish", 34_000, sowingDepth: Length.FromInches(inches));
        var plan = SizeGrouping.Arrange([Rye, radish]);
        Assert.Equal(passes, plan.Groups.Length);
        Assert.True(plan.Groups[0].SownBeforeCovering);
        Assert.DoesNotContain(plan.Findings, f => f.Code == "spread-pass-mixed-depth");
    }

    [Fact]
    public void Where_a_depth_is_not_known_a_pass_of_unlike_depths_says_so()
    {
        var radish = PassKind.FromSeedCount("radish", 34_000, sowingDepth: Length.FromInches(0.5));
        var plan = SizeGrouping.Arrange([Rye, radish, PassKind.FromSeedCount("unknown", 20_000)]);
        Assert.False(Assert.Single(plan.Groups).SownBeforeCovering);
        Assert.Contains(plan.Findings, f => f.Code == "spread-pass-mixed-depth");
    }

    [Fact]
    public void Without_depths_all_but_the_smallest_are_covered()
    {
        var plan = SizeGrouping.Arrange([PassKind.FromSeedCount("large", 2000), PassKind.FromSeedCount("small", 700_000)]);
        Assert.Equal([true, false], plan.Groups.Select(g => g.SownBeforeCovering));
    }

    [Theory, InlineData(0), InlineData(-1), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void A_kind_needs_a_seed_count(double seedsPerPound)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PassKind.FromSeedCount("kind", seedsPerPound));
        Assert.ThrowsAny<ArgumentException>(() => PassKind.FromSeedCount("kind", 1000, diameter: Length.FromMillimeters(seedsPerPound)));
        Assert.ThrowsAny<ArgumentException>(() => PassKind.FromSeedCount("kind", 1000, density: Density.FromKilogramsPerCubicMeter(seedsPerPound)));
        Assert.ThrowsAny<ArgumentException>(() => PassKind.FromSeedCount(" ", 1000));
        Assert.ThrowsAny<ArgumentException>(() => SizeGrouping.Arrange([]));
    }

    /// <summary>Common practice: oats and clover do not share a hopper.</summary>
    [Theory, InlineData("oats-spring"), InlineData("oats-winter")]
    public void No_small_clover_shares_a_pass_with_oats(string id)
    {
        var oats = PassKind.FromKind(KindCatalog.Standard.Find(id));
        string[] clovers = [.. KindCatalog.Standard.Kinds.Where(k => k.CommonName.Contains("clover", StringComparison.OrdinalIgnoreCase) && k.SeedCount is { SeedsPerPound: > 100_000 }).Select(k => k.Id)];
        Assert.True(clovers.Length >= 8, string.Join(", ", clovers));
        Assert.All(clovers, clover => Assert.Equal(2, SizeGrouping.Arrange([oats, PassKind.FromKind(KindCatalog.Standard.Find(clover))]).Groups.Length));
    }

    [Fact]
    public void The_kind_table_feeds_the_hopper()
    {
        var kinds = new[] { "cereal-rye", "austrian-winter-pea", "white-dutch-clover", "purple-top-turnip", "big-bluestem" }.Select(id => PassKind.FromKind(KindCatalog.Standard.Find(id))).ToList();
        var plan = SizeGrouping.Arrange(kinds);
        Assert.Equal(3, plan.Groups.Length);
        Assert.Equal(["austrian-winter-pea", "cereal-rye"], plan.Groups[0].Kinds.Select(k => KindCatalog.Standard.Find(k.Name).Id));
        Assert.Contains(plan.Groups, g => g.Chaffy && g.Kinds.Length == 1);
        Assert.True(plan.Groups[0].SownBeforeCovering);
        // Counts from memory stay marked: balansa clover has no published count that was read, those above have.
        Assert.DoesNotContain(plan.Findings, f => f.Code == "data-from-memory");
        Assert.Contains(SizeGrouping.Arrange([kinds[0], PassKind.FromKind(KindCatalog.Standard.Find("balansa-clover"))]).Findings, f => f.Code == "data-from-memory");
        Assert.Equal(Length.FromMillimeters(3).Millimeters, PassKind.FromKind(KindCatalog.Standard.Find("cereal-rye"), Length.FromMillimeters(3)).Diameter!.Value.Millimeters);
    }
}
