using System.Text.Json;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>A figure found by its code, in code and in JSON.</summary>
public class SheetDocExample
{
    [Fact]
    public void The_example_of_the_page_runs() =>
        DocExample.AssertCurrent("docs/field-sheet.md", "tests/PlotAgronomy.Tests/Sheets/SheetDocExample.cs", Run);

    private static void Run(TextWriter output)
    {
        var plan = FieldSheetWritingTests.Plan("fall-blend");
        // begin example
        var sheet = FieldSheet.Of(plan.Solve());
        output.WriteLine(sheet.Find("lime.rate")!.Amount);

        using var json = JsonDocument.Parse(sheet.ToJson());
        var lime = json.RootElement.GetProperty("sections").EnumerateArray().Single(s => s.GetProperty("id").GetString() == "lime");
        var figures = lime.GetProperty("blocks").EnumerateArray().Where(b => b.GetProperty("block").GetString() == "figure");
        foreach (var figure in figures.Where(f => f.TryGetProperty("value", out _)))
        {
            output.WriteLine($"{figure.GetProperty("code")}: {figure.GetProperty("value")} {figure.GetProperty("unit")}");
        }
        // end example
    }
}
