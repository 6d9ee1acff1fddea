using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

public class SecondaryRuleTests
{
    private static SoilReport Report(params SoilReading[] readings) => new() { Laboratory = "a laboratory", WaterPh = WaterPh.FromValue(6.2), Readings = [.. readings] };

    private static SoilReading Boron(double value, SoilTestUnit unit = SoilTestUnit.PartsPerMillion) => SoilReading.FromPrinted(SoilAnalyte.Boron, value, unit, Extractant.HotWater);

    [Theory]
    [InlineData(0.59, true), InlineData(0.6, false), InlineData(0.61, false)]
    public void Boron_goes_out_on_a_low_test_only_and_always_with_the_caution(double ppm, bool needed)
    {
        var answer = SecondaryRule.PlotBoron.Answer(Report(Boron(ppm)));
        Assert.Equal(needed, answer.IsNeeded);
        Assert.Equal(needed, answer.Findings.Any(f => f.Code == "nutrient-boron-toxicity"));
    }

    [Fact]
    public void Boron_on_corn_and_soybean_is_discouraged() =>
        Assert.Contains(SecondaryRule.Find("minnesota-boron-corn-soybean").Answer(Report()).Findings, f => f.Code == "nutrient-boron-discouraged");

    [Fact]
    public void Without_the_test_there_is_no_figure()
    {
        var answer = SecondaryRule.PlotBoron.Answer(Report());
        Assert.Null(answer.Low);
        Assert.Null(answer.IsNeeded);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-secondary-test-missing");
        Assert.Empty(answer.ShowWork());
    }

    [Fact]
    public void Another_extractant_gives_no_figure()
    {
        var answer = SecondaryRule.Find("kansas-zinc-corn").Answer(Report(SoilReading.FromPrinted(SoilAnalyte.Zinc, 0.5, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)));
        Assert.Null(answer.Low);
        Assert.Contains(answer.Findings, f => f.Code == "nutrient-secondary-test-not-accepted");
    }

    [Fact]
    public void An_index_is_not_a_concentration() =>
        Assert.Contains(SecondaryRule.NorthCarolinaZinc.Answer(Report(SoilReading.FromPrinted(SoilAnalyte.Zinc, 10, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3))).Findings, f => f.Code == "nutrient-secondary-test-not-accepted");

    [Fact]
    public void A_missing_fact_is_named()
    {
        Assert.Contains(SecondaryRule.Find("indiana-boron-alfalfa").Answer(Report()).Findings, f => f.Text.Contains("texture", StringComparison.Ordinal));
        Assert.Contains(SecondaryRule.WisconsinSulfurAlfalfa.Answer(Report()).Findings, f => f.Text.Contains("tissue", StringComparison.Ordinal));
        Assert.Contains(SecondaryRule.Find("north-carolina-copper").Answer(Report(SoilReading.FromPrinted(SoilAnalyte.Copper, 10, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3))).Findings, f => f.Text.Contains("soil class", StringComparison.Ordinal));
        var noPh = new SoilReport { Laboratory = "a laboratory", Readings = [SoilReading.FromPrinted(SoilAnalyte.Manganese, 40, SoilTestUnit.NorthCarolinaIndex, Extractant.Mehlich3)] };
        Assert.Contains(SecondaryRule.Find("north-carolina-manganese").Answer(noPh).Findings, f => f.Text.Contains("water pH", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.24, 25), InlineData(0.25, 0), InlineData(0.26, 0)]
    public void Sulfur_on_alfalfa_goes_by_tissue(double percent, double pounds) =>
        Assert.Equal(pounds, SecondaryRule.WisconsinSulfurAlfalfa.Answer(Report(), tissueSulfur: Fraction.FromPercent(percent)).Low!.Value.PoundsPerAcre);

    [Theory]
    [InlineData(SoilTexture.Sand, 2), InlineData(SoilTexture.LoamySand, 2), InlineData(SoilTexture.SandyLoam, 2), InlineData(SoilTexture.Loam, 0)]
    public void Boron_on_sands_only(SoilTexture texture, double pounds) =>
        Assert.Equal(pounds, SecondaryRule.Find("indiana-boron-alfalfa").Answer(new SoilReport { Laboratory = "a laboratory", Texture = texture }).Low!.Value.PoundsPerAcre);

    [Theory]
    [InlineData(1.0, 7.9, true), InlineData(1.0, 8, false), InlineData(1.1, 7.9, false)]
    public void Nebraska_says_only_whether_sulfur_pays(double organicMatterPercent, double ppm, bool needed)
    {
        var report = new SoilReport
        {
            Laboratory = "Nebraska",
            Texture = SoilTexture.Sand,
            OrganicMatter = Fraction.FromPercent(organicMatterPercent),
            Readings = [SoilReading.FromPrinted(SoilAnalyte.Sulfur, ppm, SoilTestUnit.PartsPerMillion, Extractant.NotStated)],
        };
        var answer = SecondaryRule.Find("nebraska-sulfur-corn").Answer(report);
        Assert.Equal(needed, answer.IsNeeded);
        Assert.Equal(needed, answer.Low is null);
    }

    [Fact]
    public void Magnesium_comes_with_the_lime_when_lime_is_due()
    {
        var report = Report(SoilReading.FromPrinted(SoilAnalyte.Magnesium, 40, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3));
        var rule = SecondaryRule.Find("tri-state-magnesium");
        Assert.Equal(100, rule.Answer(report).High!.Value.PoundsPerAcre);
        var limed = rule.Answer(report, isLimeDue: true);
        Assert.Equal(0, limed.High!.Value.PoundsPerAcre);
        Assert.Contains(limed.Findings, f => f.Code == "nutrient-magnesium-dolomite");
    }

    [Theory]
    [InlineData(9.99, true), InlineData(10, false)]
    public void Magnesium_is_low_by_saturation_too(double percent, bool needed)
    {
        var report = Report(SoilReading.FromPrinted(SoilAnalyte.Magnesium, 80, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3));
        Assert.Equal(needed, SecondaryRule.Find("tri-state-magnesium").Answer(report, magnesiumSaturation: Fraction.FromPercent(percent)).IsNeeded);
    }

    /// <summary>Exact: 1.5 ppm in the furrow slice are 3 lb/ac.</summary>
    [Fact]
    public void The_unit_of_the_test_does_not_matter()
    {
        var rule = SecondaryRule.Find("south-carolina-boron-alfalfa");
        ApplicationRate? Low(double value, SoilTestUnit unit) => rule.Answer(Report(SoilReading.FromPrinted(SoilAnalyte.Boron, value, unit, Extractant.NotStated))).Low;
        Assert.NotNull(Low(3, SoilTestUnit.PoundsPerAcre));
        Assert.Equal(Low(3, SoilTestUnit.PoundsPerAcre), Low(1.5, SoilTestUnit.PartsPerMillion));
        Assert.Equal(Low(3.2, SoilTestUnit.PoundsPerAcre), Low(1.6, SoilTestUnit.PartsPerMillion));
    }

    [Fact]
    public void Rules_that_disagree_stay_apart()
    {
        Assert.True(SecondaryRule.All.Concat(SecondaryRule.Unchecked).Count(r => r.Nutrient == PlantNutrient.Boron) >= 5);
        Assert.Throws<KeyNotFoundException>(() => SecondaryRule.Find("any"));
    }
}
