using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>The sum that a nitrogen rule lays out; the numbers are worked by hand from what the rules print.</summary>
public class NitrogenWorkingTests
{
    private static string[] Work(string rule, CropYield? yield = null, double? reduction = null)
    {
        ApplicationRate? less = reduction is { } pounds ? ApplicationRate.FromPoundsPerAcre(pounds) : null;
        var work = NitrogenRule.Find(rule).Answer(yield, less).ShowWork();
        return [.. work.TakeWhile(l => !l.Label.StartsWith("Dressing", StringComparison.Ordinal)).Select(l => l.Numbers)];
    }

    [Fact]
    public void A_printed_figure_is_shown_as_printed_also_where_a_yield_is_stated()
    {
        // SOIL-MS1: 30 to 40 lb on a food plot, whatever it yields.
        Assert.Equal(["30 to 40 lb/ac"], Work("mississippi-grain-plot").Select(Answer));
        Assert.Equal(Work("mississippi-grain-plot"), Work("mississippi-grain-plot", CropYield.FromBushelsPerAcre(50)));
    }

    [Fact]
    public void What_a_condition_takes_off_is_a_line_of_its_own() =>
        // SOIL-SC3: 90 lb, 20 less on the Piedmont.
        Assert.Equal("max(0, 90 - 20) = 70 lb/ac", Work("south-carolina-small-grain", reduction: 20)[1]);

    [Fact]
    public void Where_nothing_is_taken_off_there_is_no_such_line()
    {
        Assert.Single(Work("south-carolina-small-grain"));
        Assert.Single(Work("south-carolina-small-grain", reduction: 0));
    }

    [Fact]
    public void So_much_a_unit_is_multiplied_by_the_yield() =>
        // SOIL-MT1: 20 to 25 lb a ton; 2 tons take 40 to 50.
        Assert.Equal(["20 to 25 x 2 ton/ac = 40 to 50 lb/ac"], Work("montana-grass-hay", CropYield.FromTonsPerAcre(2)));

    [Theory]
    [InlineData(110, "110 + (130 - 110) x (110 - 100) / (120 - 100) = 120 lb/ac")]
    [InlineData(40, "40 + (50 - 40) x (40 - 40) / (50 - 40) = 40 lb/ac")]
    [InlineData(100, "85 + (110 - 85) x (100 - 85) / (100 - 85) = 110 lb/ac")]
    [InlineData(190, "215 + (240 - 215) x (190 - 180) / (200 - 180) = 227.5 lb/ac")]
    [InlineData(200, "215 + (240 - 215) x (200 - 180) / (200 - 180) = 240 lb/ac")]
    public void A_table_is_read_between_the_two_printed_yields_beside(double bushels, string numbers) =>
        // SOIL-OK1, corn: 40, 50, 85, 110, 130, ..., 215, 240 lb at 40, 50, 85, 100, 120, ..., 180, 200 bu.
        Assert.Equal([numbers], Work("oklahoma-corn", CropYield.FromBushelsPerAcre(bushels)));

    [Fact]
    public void A_table_in_pounds_takes_a_yield_in_tons() =>
        // SOIL-OK1, sorghum: 50 lb at 3000, 70 at 4000; 1.75 ton are 3500 lb.
        Assert.EndsWith(
            " = 60 lb/ac",
            Assert.Single(Work("oklahoma-sorghum", CropYield.FromTonsPerAcre(1.75))),
            StringComparison.Ordinal
        );

    [Fact]
    public void Without_a_figure_nothing_is_laid_out()
    {
        Assert.Empty(NitrogenRule.Find("oklahoma-corn").Answer().ShowWork());
        Assert.Empty(NitrogenRule.Find("oklahoma-corn").Answer(CropYield.FromBushelsPerAcre(201)).ShowWork());
    }

    [Theory]
    [InlineData("oklahoma-sorghum", "lb/ac")]
    [InlineData("oklahoma-corn", "bu/ac")]
    public void A_yield_outside_a_table_is_named_in_the_table_s_unit(string id, string unit)
    {
        var rule = NitrogenRule.Find(id);
        var yield = rule.YieldUnit == YieldUnit.Ton ? CropYield.FromTonsPerAcre(0.5) : CropYield.FromBushelsPerAcre(10);
        var finding = Assert.Single(rule.Answer(yield).Findings, f => f.Code == "nutrient-nitrogen-outside-table");
        Assert.Contains(unit, finding.Text, StringComparison.Ordinal);
        Assert.Contains(rule.YieldUnit == YieldUnit.Ton ? "1,000" : "10", finding.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("oklahoma-sorghum", true, 1.5, 50)]
    [InlineData("oklahoma-sorghum", true, 1.25, 40)]
    [InlineData("oklahoma-corn", false, 160, 190)]
    public void A_table_read_anew_gives_what_it_prints(string id, bool isInPounds, double yield, double pounds)
    {
        var expected = isInPounds ? CropYield.FromTonsPerAcre(yield) : CropYield.FromBushelsPerAcre(yield);
        Assert.Equal(pounds, NitrogenYields.Of(id, isInPounds).PoundsFor(expected)!.Value, 1e-9);
    }

    private static string Answer(string numbers) => numbers[(numbers.LastIndexOf('=') + 1)..].Trim();
}
