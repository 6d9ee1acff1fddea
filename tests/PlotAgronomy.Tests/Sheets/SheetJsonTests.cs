using System.Text.Json;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>The shape that docs/field-sheet.md tells other programs of.</summary>
public class SheetJsonTests
{
    private static JsonElement Json(FieldSheet sheet, bool showWork = false) => JsonDocument.Parse(sheet.ToJson(showWork)).RootElement;

    public static TheoryData<string> Sheets => ["fall-blend", "frost-seeding", "systems", "lime", "lots", "bag"];

    internal static FieldSheet Sheet(string name) =>
        name switch
        {
            "systems" => FieldSheet.Of(FieldSheetWritingTests.Plan("clover-lots").CompareSystems(includeFromMemory: true)),
            "lime" => FieldSheet.Of(FieldSheetWritingTests.Plan("clover-lots").CompareLime(includeFromMemory: true)),
            "lots" => FieldSheet.Of(FieldSheetWritingTests.Plan("clover-lots").CompareSeedLots()),
            "bag" => FieldSheet.Of(FieldSheetWritingTests.Plan("store-blend").CompareStoreBlends()),
            _ => FieldSheetWritingTests.Sheet(name),
        };

    /// <summary>Members of each block in their order; a question mark where a member may be left out.</summary>
    private static readonly Dictionary<string, string> Shapes = new()
    {
        ["sentence"] = "block text",
        ["remarks"] = "block remarks",
        ["steps"] = "block steps",
        ["table"] = "block columns rows",
        ["drawing"] = "block text svg",
        ["figure"] = "block code label text value? low? high? unit? status sourceIds",
    };

    [Theory, MemberData(nameof(Sheets))]
    public void Every_object_has_the_members_of_the_page(string name)
    {
        var json = Json(Sheet(name));
        AssertMembers("sheetVersion libraryVersion dataVersion title sections findings", json);
        foreach (var section in json.GetProperty("sections").EnumerateArray())
        {
            AssertMembers("id heading part blocks", section);
            foreach (var block in section.GetProperty("blocks").EnumerateArray())
            {
                string kind = block.GetProperty("block").GetString()!;
                AssertMembers(Shapes[kind], block);
                if (kind == "table")
                {
                    Assert.All(block.GetProperty("rows").EnumerateArray(), r => AssertMembers("cells figure?", r));
                }
            }
        }

        Assert.All(json.GetProperty("findings").EnumerateArray(), f => AssertMembers("code severity subject? values text sourceId", f));
    }

    [Fact]
    public void The_page_names_every_member_and_every_section_of_a_plan()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/field-sheet.md"));
        var names = Shapes.Values.SelectMany(s => s.Split(' ')).Concat(Shapes.Keys).Concat(["sheetVersion", "libraryVersion", "dataVersion", "title", "sections", "findings", "id", "heading", "part", "severity", "subject", "values", "sourceId", "work"])
            .Concat(Sheet("fall-blend").Sections.Select(s => s.Id));
        Assert.All(names.Select(n => n.TrimEnd('?')).Distinct(), n => Assert.Contains($"`{n}`", page, StringComparison.Ordinal));
    }

    [Fact]
    public void The_figure_on_the_page_is_the_demos()
    {
        string page = File.ReadAllText(Repository.PathOf("docs/field-sheet.md")).ReplaceLineEndings("\n");
        int start = page.IndexOf("```json\n", StringComparison.Ordinal) + "```json\n".Length;
        var shown = JsonDocument.Parse(page[start..page.IndexOf("\n```", start, StringComparison.Ordinal)]).RootElement;
        var written = Figures(Json(Sheet("fall-blend"))).Single(f => f.GetProperty("code").GetString() == "lime.ph");
        Assert.True(JsonElement.DeepEquals(shown, written), written.GetRawText());
    }

    [Theory, MemberData(nameof(Sheets))]
    public void Sections_have_ids_of_their_own(string name)
    {
        var ids = Sheet(name).Sections.Select(s => s.Id).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(ids, id => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", id));
    }

    [Fact]
    public void The_ids_of_a_plans_sections_are_stable() =>
        Assert.Equal(["verdict", "ask", "buy", "do", "spread", "after", "watch", "write-down", "report", "lime", "fertilizer", "seed", "findings", "publishers", "substitutes", "plausible", "products", "seed-in-all", "passes", "notes", "background", "sources"], Sheet("fall-blend").Sections.Select(s => s.Id));

    [Theory, MemberData(nameof(Sheets))]
    public void A_figure_that_prints_a_number_of_a_unit_has_it_as_a_number(string name)
    {
        var figures = Sheet(name).Figures;
        // A rating says a class of the reading, a row of the systems two numbers, a method without a common basis none.
        Assert.All(figures.Where(f => f.Amount is null), f => Assert.Matches("^(-$|[a-z]+.* \\(|P2O5)", f.Value));
        Assert.Contains(figures, f => f.Amount is not null || name == "systems");
    }

    [Theory, MemberData(nameof(Sheets))]
    public void A_number_reads_back_exactly_and_lies_in_its_range(string name)
    {
        var sheet = Sheet(name);
        var written = Figures(Json(sheet)).ToDictionary(f => f.GetProperty("code").GetString()!);
        Assert.Equal(sheet.Figures.Length, written.Count);
        foreach (var figure in sheet.Figures.Where(f => f.Amount is not null))
        {
            var json = written[figure.Code];
            Assert.Equal(figure.Amount!.Value, Number(json, "value"));
            Assert.Equal(figure.Amount.Low, Number(json, "low"));
            Assert.Equal(figure.Amount.High, Number(json, "high"));
            Assert.Equal(figure.Amount.Unit, json.GetProperty("unit").GetString());
            Assert.Equal(figure.Amount.Low is null, figure.Amount.High is null);
            Assert.True(figure.Amount.Value is not null || figure.Amount.Low is not null);
            Assert.True(figure.Amount.Low is null || figure.Amount.Low <= figure.Amount.High);
            Assert.True(figure.Amount is { Value: null } or { Low: null } || (figure.Amount.Low <= figure.Amount.Value && figure.Amount.Value <= figure.Amount.High), $"{figure.Code} {figure.Amount}");
        }
    }

    /// <summary>By the rectangle of the plan, 182 by 140 ft.</summary>
    [Fact]
    public void The_area_is_that_of_the_plans_sides()
    {
        var area = Sheet("fall-blend").Find("plot.area")!.Amount!;
        Assert.Equal("ac", area.Unit);
        Assert.Equal(182 * 140 / 43560.0, area.Value!.Value, 1e-12);
    }

    [Fact]
    public void The_shopping_list_adds_up()
    {
        var rows = Sheet("fall-blend").Sections.Single(s => s.Id == "buy").Blocks.OfType<SheetTable>().Single().Rows;
        double total = Sheet("fall-blend").Figures.Single(f => f.Label == "all together").Amount!.Value!.Value;
        Assert.Equal(2 * total, rows.Sum(r => r.Figure!.Amount!.Value!.Value), 1e-9);
    }

    [Fact]
    public void Findings_carry_what_they_are_about()
    {
        var sheet = Sheet("fall-blend");
        var written = Json(sheet).GetProperty("findings").EnumerateArray().ToList();
        Assert.Equal(sheet.Findings.Length, written.Count);
        foreach (var (finding, json) in sheet.Findings.Zip(written))
        {
            Assert.Equal(finding.Code, json.GetProperty("code").GetString());
            Assert.Equal(finding.Subject, json.TryGetProperty("subject", out var subject) ? subject.GetString() : null);
            Assert.Equal(finding.Values.Select(v => (v.Name, v.Text)), json.GetProperty("values").EnumerateObject().Select(v => (v.Name, v.Value.GetString()!)));
        }

        Assert.Contains(sheet.Findings, f => f.Subject is not null && f.Values.Length > 0);
    }

    [Fact]
    public void Text_is_escaped_and_comes_back_as_it_was()
    {
        const string Hostile = "a\"b\\c\n\t\u0001<&>'\u00E9\u7530\U0001F33F\u2028 |";
        string json = FieldSheetWritingTests.OfBlocks(new SheetSentence { Text = Hostile }).ToJson();
        Assert.All(json, c => Assert.True(c is '\n' or (>= ' ' and <= '~')));
        Assert.Equal(Hostile, JsonDocument.Parse(json).RootElement.GetProperty("sections")[0].GetProperty("blocks")[0].GetProperty("text").GetString());
    }

    [Fact]
    public void The_working_is_written_on_demand()
    {
        var figure = Figures(Json(Sheet("fall-blend"), showWork: true)).First();
        Assert.NotEqual(0, figure.GetProperty("work").GetArrayLength());
    }

    private static double? Number(JsonElement json, string name) => json.TryGetProperty(name, out var number) ? number.GetDouble() : null;

    private static IEnumerable<JsonElement> Figures(JsonElement sheet) =>
        from section in sheet.GetProperty("sections").EnumerateArray()
        from block in section.GetProperty("blocks").EnumerateArray()
        from figure in block.GetProperty("block").GetString() switch
        {
            "figure" => [block],
            "table" => block.GetProperty("rows").EnumerateArray().Where(r => r.TryGetProperty("figure", out _)).Select(r => r.GetProperty("figure")),
            _ => Enumerable.Empty<JsonElement>(),
        }
        select figure;

    private static void AssertMembers(string shape, JsonElement json)
    {
        var found = new Queue<string>(json.EnumerateObject().Select(p => p.Name));
        foreach (string member in shape.Split(' '))
        {
            string name = member.TrimEnd('?');
            if (found.TryPeek(out string? next) && next == name)
            {
                found.Dequeue();
            }
            else
            {
                Assert.True(member.EndsWith('?'), $"'{name}' is missing in {json.GetRawText()}");
            }
        }

        Assert.Empty(found);
    }
}
