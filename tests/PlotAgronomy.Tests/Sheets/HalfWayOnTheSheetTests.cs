using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>The rule for half way stands with its figures where the passes are.</summary>
/// <remarks>By hand: 23.1 lb of the first pass, half is 11.5; a tenth more left makes 11/9 of 25 s, 31 s; a tenth less 9/11, 21 s.</remarks>
public class HalfWayOnTheSheetTests
{
    private static string Whole(string plan) => string.Join(' ', TwoPagesTests.Front(TwoPagesTests.Answers(plan), 200).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void What_must_be_left_and_the_pace_from_there_are_told_a_pass()
    {
        string sheet = Whole("samples/data/fall-blend.json");
        Assert.Contains("Half way, after pass 5, weigh what is left and set the pace by it.", sheet, StringComparison.Ordinal);
        Assert.Contains("Spring oats: 12.7 lb or more, 100 ft in 31 s; 10.4 lb or less, 21 s.", sheet, StringComparison.Ordinal);
        Assert.Contains("The others: a tenth more, 1.2 times as long; a tenth less, 0.8 times.", sheet, StringComparison.Ordinal);
        Assert.Equal("2 fills", Walk("10-20-20").Cells[^1]);
        Assert.Equal("2.01 lb", Walk("Crimson clover, Chicory").Cells[^1]);
    }

    private static SheetRow Walk(string what) =>
        FieldSheet.Of(TwoPagesTests.Answers("samples/data/fall-blend.json")).Sections.Single(s => s.Id == "spread").Blocks.OfType<SheetTable>().Single().Rows.Single(r => r.Cells[0] == what);

    [Fact]
    public void The_row_of_a_pass_shows_the_sum()
    {
        var sheet = FieldSheet.Of(TwoPagesTests.Answers("samples/data/fall-blend.json"));
        var row = sheet.Sections.Single(s => s.Id == "spread").Blocks.OfType<SheetTable>().Single().Rows.Single(r => r.Figure!.Code == "walk.pass-1");
        Assert.Contains(row.Figure!.ShowWork(), l => l.Label == "Must be left");
    }
}
