using System.Text.Json.Nodes;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>What lies in the shed is not carried home once more: the list tells it from what is bought, in every form.</summary>
/// <remarks>Expected: practice; 25.5 lb of muriate and 3.81 lb of crimson clover are what the plan takes without a shed.</remarks>
public class ShedOnTheSheetTests
{
    private static FieldSheet Sheet
    {
        get
        {
            string plan = EditedPlan.Of("fall-blend", json =>
            {
                Add(json, "fertilizers", """{ "name": "muriate of potash", "analysis": "0-0-60", "package": "30 lb", "price": 0, "available": 1 }""");
                Add(json, "seedLots", """{ "kind": "crimson clover", "lot": "OLD", "pureSeed": "98.5 %", "germination": "78 %", "hardSeed": "9 %", "tested": "2026-06-01", "package": "2 lb", "price": 0, "available": 1 }""");
                Add(json, "lime", """{ "name": "limestone in the shed", "form": "ground limestone", "cce": 88, "poundsEqualToOneTon": 2080, "package": "50 lb", "price": 0, "available": 40 }""");
            });
            return FieldSheet.Of(PlanFile.Read(plan).Plan!.Solve());
        }
    }

    private static void Add(JsonNode plan, string list, string offer) => plan["materials"]![list]!.AsArray().Add(JsonNode.Parse(offer));

    private static SheetTable Buying(FieldSheet sheet) => sheet.Sections.Single(s => s.Id == "buy").Blocks.OfType<SheetTable>().Single();

    private static SheetRow Row(FieldSheet sheet, string item) => Buying(sheet).Rows.Single(r => r.Cells[0].Contains(item, StringComparison.Ordinal));

    [Fact]
    public void What_is_taken_from_the_shed_and_what_is_bought_stand_apart()
    {
        var sheet = Sheet;
        Assert.Equal(["item", "from the shed", "to buy", "cost"], Buying(sheet).Columns);
        Assert.Equal(["766.5 lb", "-"], Row(sheet, "limestone in the shed").Cells[1..3]);
        Assert.Equal(["25.5 lb", "-"], Row(sheet, "muriate").Cells[1..3]);
        Assert.Equal(["2 lb", "-"], Row(sheet, "lot OLD").Cells[1..3]);
        Assert.Equal(["-", "1 x 25 lb"], Row(sheet, "lot CC-9").Cells[1..3]);
    }

    [Fact]
    public void Every_form_says_so()
    {
        var sheet = Sheet;
        Assert.All([sheet.ToText(), sheet.ToMarkdown(), sheet.ToHtml(), sheet.ToJson()], form =>
        {
            Assert.Contains("from the shed", form, StringComparison.Ordinal);
            Assert.Contains("to buy", form, StringComparison.Ordinal);
        });
        Assert.Equal("25.5 lb from the shed, none bought", Row(sheet, "muriate").Figure!.Value);
        Assert.Contains("25.5 lb from the shed, none bought", sheet.ToJson(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_shed_no_column_speaks_of_one() =>
        Assert.Equal(["item", "packages", "cost"], Buying(FieldSheet.Of(FieldSheetWritingTests.Plan("fall-blend").Solve())).Columns);
}
