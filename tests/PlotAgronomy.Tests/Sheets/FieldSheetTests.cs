using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

public class FieldSheetTests
{
    public static TheoryData<string> Demos => ["fall-blend", "frost-seeding"];

    private static FieldSheet Sheet(string demo) => FieldSheet.Of(PlanFile.Read(File.ReadAllText(Repository.PathOf($"samples/data/{demo}.json"))).Plan!.Solve());

    [Theory, MemberData(nameof(Demos))]
    public void Every_figure_has_its_own_code_and_shows_its_working(string demo)
    {
        var figures = Sheet(demo).Figures;
        Assert.Equal(figures.Length, figures.Select(f => f.Code).Distinct().Count());
        Assert.All(figures, f => Assert.NotEmpty(f.ShowWork()));
    }

    [Theory, MemberData(nameof(Demos))]
    public void Every_source_named_beside_a_figure_stands_in_the_list(string demo)
    {
        var sheet = Sheet(demo);
        Assert.All(sheet.Figures.SelectMany(f => f.Sources), source => Assert.Contains(source, sheet.Sources));
        Assert.All(sheet.Findings, f => Assert.Contains(f.Source, sheet.Sources));
    }

    [Theory, MemberData(nameof(Demos))]
    public void The_sections_stand_in_the_order_of_the_work(string demo) =>
        Assert.Equal(
            ["verdict", "ask", "buy", "do", "spread", "after", "watch", "write-down", "report", "lime", "fertilizer", "seed"],
            Sheet(demo).Sections.Select(s => s.Id).Take(12));

    [Theory, MemberData(nameof(Demos))]
    public void Findings_stand_most_serious_first(string demo)
    {
        var severities = Sheet(demo).Findings.Select(f => f.Severity).ToList();
        Assert.Equal(severities.OrderDescending(), severities);
    }

    [Theory, MemberData(nameof(Demos))]
    public void A_table_row_is_as_wide_as_its_headings(string demo) =>
        Assert.All(Sheet(demo).Sections.SelectMany(s => s.Blocks).OfType<SheetTable>(), t => Assert.All(t.Rows, r => Assert.Equal(t.Columns.Length, r.Cells.Length)));

    /// <summary>A reading far above what any crop is advised the nutrient for, and a balanced grade so cheap that it would be bought for the others.</summary>
    private static FieldSheet WithPlentyOf(string analyte, double reported, string cheap = "19-19-19") => FieldSheet.Of(PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))
        .Replace($"\"analyte\": \"{analyte}\", \"value\": {reported}", $"\"analyte\": \"{analyte}\", \"value\": 150", StringComparison.Ordinal)
        .Replace($"\"{cheap}\", \"package\": \"50 lb\", \"price\": {(cheap == "19-19-19" ? "29.5" : "24")}", $"\"{cheap}\", \"package\": \"50 lb\", \"price\": 3", StringComparison.Ordinal)).Plan!.Solve());

    [Fact]
    public void No_phosphate_is_spread_where_the_test_is_high()
    {
        var sheet = WithPlentyOf("P", 34);
        Assert.Equal(["0", "0", "0"], NeedRow(sheet, "phosphate").Skip(1));
        Assert.DoesNotContain(sheet.Findings, f => f.Code is "fertilizer-phosphate-unneeded" or "fertilizer-no-set-fits");
    }

    [Fact]
    public void Much_of_a_nutrient_nobody_asked_for_is_remarked_on() =>
        Assert.Contains(WithPlentyOf("K", 41, cheap: "10-20-20").Findings, f => f.Code == "fertilizer-unneeded" && f.Text.Contains("K2O", StringComparison.Ordinal));

    /// <summary>A cheap grade is put on offer for a clover stand that is to get 40 lb P2O5/ac. Legumes take at most 20 lb N/ac (common practice):
    /// 10-20-20 brings just that, 12-20-20 would bring 24.</summary>
    [Theory]
    [InlineData("10-20-20", "20"), InlineData("12-20-20", "0")]
    public void Nitrogen_on_clover_stays_within_its_limit(string grade, string brought)
    {
        var sheet = FieldSheet.Of(PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/frost-seeding.json"))
            .Replace("\"analysis\": \"0-20-20\", \"package\": \"50 lb\", \"price\": 26", $"\"analysis\": \"{grade}\", \"package\": \"50 lb\", \"price\": 3", StringComparison.Ordinal)).Plan!.Solve());
        Assert.Equal(["0", "20", brought], NeedRow(sheet, "nitrogen").Skip(1));
        Assert.Equal(brought != "0", sheet.Findings.Any(f => f.Code == "fertilizer-nitrogen-on-legume"));
        Assert.DoesNotContain(sheet.Findings, f => f.Code == "fertilizer-no-set-fits");
    }

    private static ImmutableArray<string> NeedRow(FieldSheet sheet, string nutrient) =>
        sheet.Sections.SelectMany(s => s.Blocks).OfType<SheetTable>().Single(t => t.Columns.Contains("not above, lb/ac")).Rows
            .Single(r => r.Cells[0].StartsWith(nutrient, StringComparison.Ordinal)).Cells;

    [Fact]
    public void A_plan_with_an_area_alone_asks_for_sides()
    {
        string json = File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"))
            .Replace("\"sides\": { \"shape\": \"rectangle\", \"length\": \"182 ft\", \"width\": \"140 ft\" }", "\"area\": \"0.585 ac\"", StringComparison.Ordinal);
        var sheet = FieldSheet.Of(PlanFile.Read(json).Plan!.Solve());
        Assert.Contains(sheet.Findings, f => f.Code == "plan-no-sides");
    }
}
