using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>The sum and the reason that a rule for a secondary or trace nutrient gives; numbers are worked by hand from the
/// printed
/// equations.</summary>
public class SecondaryWorkingTests
{
    private static SoilReport Report(double? waterPh, params SoilReading[] readings) =>
        new()
        {
            Laboratory = "a laboratory",
            WaterPh = waterPh is { } ph ? WaterPh.FromValue(ph) : null,
            Readings = [.. readings],
        };

    private static SoilReading Reading(
        SoilAnalyte analyte,
        double value,
        Extractant extractant,
        SoilTestUnit unit = SoilTestUnit.PartsPerMillion
    ) =>
        SoilReading.FromPrinted(analyte, value, unit, extractant);

    private static string Numbers(SecondaryAnswer answer) => Assert.Single(answer.ShowWork()).Numbers;

    [Fact]
    public void Kansas_zinc_falls_with_the_test()
    {
        // SOIL-KS1: 11.5 - 11.25 x 0.4 = 7 lb.
        var answer = SecondaryRule.Find("kansas-zinc-corn").Answer(Report(6.2, Reading(SoilAnalyte.Zinc, 0.4, Extractant.Dtpa)));
        Assert.Equal("max(0, 11.5 - 11.25 x 0.4) = 7 lb/ac", Numbers(answer));
        Assert.Equal(7, answer.High!.Value.PoundsPerAcre, 1e-9);
    }

    [Theory]
    [InlineData("tri-state-zinc", SoilAnalyte.Zinc, "max(0, 5 x 7.5 - 32 - 0.4 x 5) = 3.5 lb/ac")]
    [InlineData("tri-state-manganese", SoilAnalyte.Manganese, "max(0, 6.2 x 7.5 - 36 - 0.35 x 5) = 8.8 lb/ac")]
    public void Tri_state_zinc_and_manganese_rise_with_the_pH_and_fall_with_the_test(
        string rule,
        SoilAnalyte analyte,
        string numbers
    ) =>
        // SOIL-TS1: 37.5 - 32 - 2 = 3.5; 46.5 - 36 - 1.75 = 8.75.
        Assert.Equal(
            numbers,
            Numbers(SecondaryRule.Find(rule).Answer(Report(7.5, Reading(analyte, 5, Extractant.HydrochloricAcid))))
        );

    [Fact]
    public void A_printed_rate_is_shown_with_the_test_and_the_advice() =>
        Assert.Equal(
            "1 lb/ac at 0.5: once; never again without a new test",
            Numbers(SecondaryRule.PlotBoron.Answer(Report(6.2, Reading(SoilAnalyte.Boron, 0.5, Extractant.HotWater))))
        );

    [Fact]
    public void A_printed_rate_that_asks_no_test_shows_none() =>
        Assert.Equal(
            "2 lb/ac: before planting and every year",
            Numbers(SecondaryRule.Find("tennessee-boron-alfalfa").Answer(Report(6.2)))
        );

    [Fact]
    public void The_reason_says_whether_the_rule_answered_and_why_none_is_needed()
    {
        Assert.Equal("no figure", SecondaryRule.PlotBoron.Answer(Report(6.2)).Reason);
        Assert.Equal(
            "the test is high enough (0.7), so none is needed",
            SecondaryRule.PlotBoron.Answer(Report(6.2, Reading(SoilAnalyte.Boron, 0.7, Extractant.HotWater))).Reason
        );
        Assert.Equal(
            "it does not apply here, so none is needed",
            SecondaryRule.Find("tennessee-manganese-soybean").Answer(Report(6.8)).Reason
        );
    }

    [Fact]
    public void A_rate_of_nothing_is_no_need() =>
        Assert.False(SecondaryRule.Find("minnesota-boron-corn-soybean").Answer(Report(6.2)).IsNeeded);

    [Fact]
    public void Magnesium_that_the_lime_brings_is_needed_all_the_same()
    {
        var limed = SecondaryRule.Find(
            "tri-state-magnesium").Answer(Report(5.2, Reading(SoilAnalyte.Magnesium, 40, Extractant.Mehlich3)),
            isLimeDue: true
        );
        Assert.True(limed.IsNeeded);
        Assert.Equal("dolomitic lime brings it", limed.Reason);
    }

    [Fact]
    public void A_kind_and_a_soil_must_be_given()
    {
        Assert.Equal("kind", Assert.Throws<ArgumentNullException>(() => SecondaryRule.PlotBoron.IsFor(null!)).ParamName);
        Assert.Equal("soil", Assert.Throws<ArgumentNullException>(() => SecondaryRule.PlotBoron.Answer(null!)).ParamName);
    }
}
