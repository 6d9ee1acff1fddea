using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.PlanFiles;

public class PlanFileTests
{
    private static string Demo(string name) => File.ReadAllText(Repository.PathOf($"samples/data/{name}.json"));

    private static string TenMistakes => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "PlanFiles", "ten-mistakes.json"));

    [Theory]
    [InlineData("fall-blend")]
    [InlineData("frost-seeding")]
    [InlineData("clover-lots")]
    [InlineData("store-blend")]
    public void The_demo_plans_hold_no_mistake(string name) => Assert.Empty(PlanFile.Read(Demo(name)).Problems);

    [Fact]
    public void Ten_mistakes_are_all_reported_at_once_with_line_column_and_path()
    {
        var reading = PlanFile.Read(TenMistakes);
        Assert.Null(reading.Plan);
        (int Line, string Path)[] expected =
        [
            (3, "$.currency"), (4, "$.plantingDate"), (5, "$.method"), (8, "$.plot.sides.length"), (8, "$.plot.sides.width"), (9, "$.plot.colour"),
            (16, "$.soilReport.waterPh"), (18, "$.soilReport.readings[0].unit"), (24, "$.growing.kinds[0].kind"), (29, "$.materials.seedLots[0].pureSeed"),
        ];
        Assert.Equal(expected, reading.Problems.Select(p => (p.Line, p.Path)));
        Assert.All(reading.Problems, p => Assert.True(p.Column > 1, p.ToString()));
    }

    [Fact]
    public void A_mistake_says_what_was_expected()
    {
        var problems = PlanFile.Read(TenMistakes).Problems;
        Assert.Contains("'0.62 ac'", PlanFile.Read(Demo("fall-blend").Replace("\"sides\": { \"shape\": \"rectangle\", \"length\": \"182 ft\", \"width\": \"140 ft\" }", "\"area\": \"0.6\"", StringComparison.Ordinal)).Problems.Single().Text, StringComparison.Ordinal);
        Assert.Contains("ISO 8601", problems.Single(p => p.Path == "$.plantingDate").Text, StringComparison.Ordinal);
        Assert.Contains("tilled-and-packed", problems.Single(p => p.Path == "$.method").Text, StringComparison.Ordinal);
        Assert.Contains("unknown field", problems.Single(p => p.Path == "$.plot.colour").Text, StringComparison.Ordinal);
        Assert.Contains("no unit", problems.Single(p => p.Path == "$.plot.sides.length").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_counts_characters_even_after_letters_of_many_bytes()
    {
        var reading = PlanFile.Read("{\n  \"currency\": \"ÄÖÜ\", \"nonsense\": 1\n}");
        var unknown = reading.Problems.Single(p => p.Path == "$.nonsense");
        Assert.Equal((2, 22), (unknown.Line, unknown.Column));
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("{\n  \"currency\": \n", 3)]
    [InlineData("[1, 2", 1)]
    public void Text_that_is_not_JSON_names_its_line(string text, int line)
    {
        var problem = Assert.Single(PlanFile.Read(text).Problems);
        Assert.Contains("not JSON", problem.Text, StringComparison.Ordinal);
        Assert.Equal(line, problem.Line);
    }

    [Fact]
    public void A_plan_that_is_not_an_object_is_refused() => Assert.NotEmpty(PlanFile.Read("[1]").Problems);

    [Fact]
    public void Either_sides_or_an_outline_or_an_area_and_never_two()
    {
        string both = Demo("fall-blend").Replace("\"texture\": \"sandy loam\",", "\"texture\": \"sandy loam\", \"area\": \"0.6 ac\",", StringComparison.Ordinal);
        Assert.Contains("exactly one of sides, pieces, outline, outlineFile, area", Assert.Single(PlanFile.Read(both).Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Shares_must_come_to_the_stated_total()
    {
        string off = Demo("fall-blend").Replace("\"shareOfFullStand\": 0.2 }", "\"shareOfFullStand\": 0.4 }", StringComparison.Ordinal);
        Assert.Contains("sum to 1.2", Assert.Single(PlanFile.Read(off).Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_that_could_be_two_is_never_guessed()
    {
        string two = Demo("fall-blend").Replace("spring oats", "oats", StringComparison.Ordinal);
        Assert.All(PlanFile.Read(two).Problems, p => Assert.Contains("may be any of", p.Text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_kind_without_a_lot_on_offer_is_a_mistake()
    {
        string missing = Demo("fall-blend").Replace("{ \"kind\": \"chicory\", \"lot\"", "{ \"kind\": \"plantain\", \"lot\"", StringComparison.Ordinal);
        Assert.Contains("no seed lot of Chicory", Assert.Single(PlanFile.Read(missing).Problems).Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Reading_and_building_do_not_follow_the_culture(string culture)
    {
        var plain = Text(FieldSheet.Of(PlanFile.Read(Demo("fall-blend")).Plan!.Solve()));
        using var scope = new CultureScope(culture);
        Assert.Equal(plain, Text(FieldSheet.Of(PlanFile.Read(Demo("fall-blend")).Plan!.Solve())));
    }

    private static string Text(FieldSheet sheet) => string.Join('\n', sheet.Figures.Select(f => $"{f.Code} {f.Label} {f.Value}")) + string.Join('\n', sheet.Findings);
}
