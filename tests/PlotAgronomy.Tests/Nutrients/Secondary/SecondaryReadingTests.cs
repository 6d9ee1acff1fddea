using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>Which reading of a report a rule takes, and what it says where it takes none.</summary>
public class SecondaryReadingTests
{
    private static SoilReport Report(params SoilReading[] readings) =>
        new() { Laboratory = "a laboratory", WaterPh = WaterPh.FromValue(6.2), Readings = [.. readings] };

    private static SoilReading Zinc(double value, SoilTestUnit unit, Extractant extractant = Extractant.Dtpa) =>
        SoilReading.FromPrinted(SoilAnalyte.Zinc, value, unit, extractant);

    private static SoilReading Magnesium(double value, SoilTestUnit unit, Extractant extractant) =>
        SoilReading.FromPrinted(SoilAnalyte.Magnesium, value, unit, extractant);

    private static SecondaryAnswer Ask(string rule, params SoilReading[] readings) =>
        SecondaryRule.Find(rule).Answer(Report(readings));

    private static string Said(SecondaryAnswer answer, string code) => Assert.Single(answer.Findings, f => f.Code == code).Text;

    [Theory]
    [InlineData("tri-state-zinc", SoilAnalyte.Zinc, Extractant.HydrochloricAcid, "water pH")]
    [InlineData("tennessee-manganese-soybean", SoilAnalyte.Manganese, Extractant.Mehlich1, "water pH")]
    [InlineData("nebraska-sulfur-corn", SoilAnalyte.Sulfur, Extractant.NotStated, "organic matter")]
    public void A_fact_that_a_row_asks_for_is_named_where_it_is_missing(
        string rule,
        SoilAnalyte analyte,
        Extractant extractant,
        string fact
    )
    {
        var report = new SoilReport
        {
            Laboratory = "a laboratory",
            Texture = SoilTexture.Sand,
            Readings = [SoilReading.FromPrinted(analyte, 2, SoilTestUnit.PartsPerMillion, extractant)],
        };
        var answer = SecondaryRule.Find(rule).Answer(report);
        Assert.Null(answer.Low);
        Assert.Null(answer.IsNeeded);
        Assert.Contains(fact, Said(answer, "nutrient-secondary-fact-missing"), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_two_readings_the_one_in_the_rule_s_own_unit_counts_in_either_order()
    {
        // SOIL-KS1: 11.5 - 11.25 x 0.4 = 7 lb by the ppm; 0.2 lb/ac would be 0.1 ppm and 10.4 lb.
        var (own, other) = (Zinc(0.4, SoilTestUnit.PartsPerMillion), Zinc(0.2, SoilTestUnit.PoundsPerAcre));
        Assert.Equal(7, Ask("kansas-zinc-corn", own, other).High!.Value.PoundsPerAcre, 1e-9);
        Assert.Equal(7, Ask("kansas-zinc-corn", other, own).High!.Value.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void Two_readings_of_one_kind_that_differ_give_no_figure_and_are_named()
    {
        var answer = Ask("kansas-zinc-corn", Zinc(0.4, SoilTestUnit.PartsPerMillion), Zinc(0.5, SoilTestUnit.PartsPerMillion));
        Assert.Null(answer.Low);
        string said = Said(answer, "soil-reading-twice");
        Assert.Contains("0.4", said, StringComparison.Ordinal);
        Assert.Contains("0.5", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_reading_twice_is_one_reading()
    {
        var answer = Ask("kansas-zinc-corn", Zinc(0.4, SoilTestUnit.PartsPerMillion), Zinc(0.4, SoilTestUnit.PartsPerMillion));
        Assert.Equal(7, answer.High!.Value.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void A_weight_per_area_is_turned_into_the_rule_s_unit_whatever_the_extractant()
    {
        // 2 million lb in the furrow slice: 0.8 lb/ac are 0.4 ppm.
        var answer = Ask("kansas-zinc-corn", Zinc(0.8, SoilTestUnit.PoundsPerAcre));
        Assert.Equal(7, answer.High!.Value.PoundsPerAcre, 1e-9);
        Assert.DoesNotContain(answer.Findings, f => f.Code == "nutrient-secondary-test-not-accepted");
        Assert.Contains(answer.Findings, f => f.Code == "soil-depth-assumed");
    }

    [Theory]
    [InlineData(Extractant.Mehlich3, true)]
    [InlineData(Extractant.AmmoniumAcetate, false)]
    public void An_index_is_turned_into_ppm_only_by_the_extractant_it_was_made_for(Extractant extractant, bool answers)
    {
        var answer = Ask("tri-state-magnesium", Magnesium(60, SoilTestUnit.OklahomaIndex, extractant));
        Assert.Equal(answers, answer.Low is not null);
        Assert.Equal(!answers, answer.Findings.Any(f => f.Code == "nutrient-secondary-test-not-accepted"));
    }

    [Fact]
    public void The_wanted_extractant_is_named_and_a_rule_that_names_none_says_so()
    {
        string kansas = Said(
            Ask("kansas-zinc-corn", Zinc(0.5, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3)),
            "nutrient-secondary-test-not-accepted"
        );
        Assert.Contains("DTPA", kansas, StringComparison.Ordinal);
        string carolina = Said(
            SecondaryRule.Find("south-carolina-boron-alfalfa").Answer(
                Report(SoilReading.FromPrinted(SoilAnalyte.Boron, 1, SoilTestUnit.PoundsPerAcre, Extractant.HotWater))
            ),
            "nutrient-secondary-test-not-accepted"
        );
        Assert.Contains("a test whose extractant it does not name", carolina, StringComparison.Ordinal);
    }
}
