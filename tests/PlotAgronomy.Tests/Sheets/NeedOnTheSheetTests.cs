using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>What the sheet says of the report and the need.</summary>
public class NeedOnTheSheetTests
{
    private static FieldSheet Read(string json) => FieldSheet.Of(PlanFile.Read(json).Plan!.Solve());

    private static string Frost(string field, string instead)
    {
        string json = File.ReadAllText(Repository.PathOf("samples/data/frost-seeding.json"));
        Assert.Contains(field, json, StringComparison.Ordinal);
        return json.Replace(field, instead, StringComparison.Ordinal);
    }

    /// <summary>Hand algebra on the published goals and factors: P (40 - 32) x 9 / 4 = 18; K (260 - 208) x 4 / 4 = 52; the plan reads twice the ppm.</summary>
    [Fact]
    public void Facts_a_system_asks_for_can_stand_in_the_plan()
    {
        string json = Frost("\"nutrients\": \"TS-2020\"", "\"nutrients\": \"IL\"");
        Assert.Equal(2, Read(json).Findings.Count(f => f.Code == "nutrient-fact-missing"));
        var asked = Read(json.Replace("\"waterPh\"", "\"facts\": { \"phosphorusSupply\": \"high\", \"exchangeCapacityGroup\": \"low\" }, \"waterPh\"", StringComparison.Ordinal));
        Assert.DoesNotContain(asked.Findings, f => f.Code == "nutrient-fact-missing");
        var reasons = asked.Sections.SelectMany(s => s.Blocks).OfType<SheetRemarks>().SelectMany(r => r.Remarks).Select(r => r.Text).ToList();
        Assert.Contains("Printed by a regional laboratory for clover plot; Illinois build-up and maintenance would ask for 18 lb/ac.", reasons);
        Assert.Contains("Printed by a regional laboratory for clover plot; Illinois build-up and maintenance would ask for 52 lb/ac.", reasons);
    }

    [Fact]
    public void A_nutrient_without_a_figure_is_named_where_the_figure_would_stand()
    {
        var sheet = Read(Frost("\"extractant\": \"Mehlich-3\"", "\"extractant\": \"Olsen\"").Replace("\"phosphate\": \"40 lb/ac\",", "", StringComparison.Ordinal));
        var sentences = sheet.Sections.Single(s => s.Heading.StartsWith("Fertilizer", StringComparison.Ordinal)).Blocks.OfType<SheetSentence>().Select(s => s.Text);
        Assert.Contains(sentences, t => t.StartsWith("P2O5 is not known, which is not the same as none", StringComparison.Ordinal));
    }

    [Fact]
    public void The_sampled_depth_is_remarked_on_once()
    {
        var sheet = Read(Frost("\"depth\": \"8 in\",", "\"depth\": \"3 in\","));
        Assert.Single(sheet.Findings, f => f.Code is "nutrient-sample-depth" or "soil-depth-differs" or "soil-sample-shallow");
    }

    /// <summary>By the printed rule 32 lb/ac in the furrow slice are 16 ppm: the printed figure keeps its unit, the limits theirs.</summary>
    [Fact]
    public void A_reading_is_shown_in_the_unit_it_was_printed_in()
    {
        var sheet = Read(Frost("\"value\": 16, \"unit\": \"ppm\"", "\"value\": 32, \"unit\": \"lb/ac\""));
        Assert.Contains(sheet.Figures, f => f.Label == "phosphorus 32 lb/ac (Mehlich-3)" && f.Value == "deficient (below 30 ppm)");
    }
}
