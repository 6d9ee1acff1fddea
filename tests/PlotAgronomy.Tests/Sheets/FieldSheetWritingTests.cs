using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.SampleConsole;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

public class FieldSheetWritingTests
{
    internal static PlotPlan Plan(string demo) => PlanFile.Read(File.ReadAllText(ConsoleTests.Data($"{demo}.json"))).Plan!;

    internal static FieldSheet Sheet(string demo = "fall-blend") => FieldSheet.Of(Plan(demo).Solve());

    /// <summary>A sheet of one section, to write what no plan gives.</summary>
    internal static FieldSheet OfBlocks(params SheetBlock[] blocks) =>
        new()
        {
            Title = "Tiny",
            Sections = [new SheetSection { Id = "part", Heading = "Part", Blocks = [.. blocks] }],
            Findings = [],
            Sources = [],
        };

    [Theory]
    [InlineData("fall-blend", 100), InlineData("frost-seeding", 60), InlineData("frost-seeding", 200)]
    public void The_console_prints_what_the_sheet_writes(string demo, int width)
    {
        Assert.Equal(Sheet(demo).ToText(width), ConsoleTests.Run("plan", ConsoleTests.Data($"{demo}.json"), "--width", $"{width}").Out);
        Assert.Equal(Sheet(demo).ToMarkdown(showWork: true), ConsoleTests.Run("plan", ConsoleTests.Data($"{demo}.json"), "--format", "markdown", "--work").Out);
        Assert.Equal(Sheet(demo).ToJson(), ConsoleTests.Run("plan", ConsoleTests.Data($"{demo}.json"), "--format", "json").Out);
    }

    [Fact]
    public void No_line_of_text_is_longer_than_its_width()
    {
        var sheet = Sheet();
        for (int width = FieldSheetWriting.LeastWidth; width <= FieldSheetWriting.MostWidth; width += 7)
        {
            Assert.All(sheet.ToText(width, showWork: true).Split('\n'), line => Assert.InRange(line.Length, 0, width));
        }
    }

    [Fact]
    public void Where_no_word_must_be_cut_the_words_are_the_same()
    {
        var sheet = Sheet("frost-seeding");
        string[] words = SaidIn(sheet.ToText(200));
        Assert.All([100, 131], width => Assert.Equal(words, SaidIn(sheet.ToText(width))));
    }

    /// <summary>Letters in their order by kind, since wrapped cells of a row stand in turn.</summary>
    private static string[] SaidIn(string text) =>
        [.. text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries).Where(w => w.Any(char.IsLetterOrDigit)).Order(StringComparer.Ordinal)];

    [Theory]
    [InlineData(59), InlineData(201), InlineData(0), InlineData(-1), InlineData(int.MaxValue)]
    public void A_width_outside_its_range_is_refused(int width) =>
        Assert.Equal("width", Assert.Throws<ArgumentOutOfRangeException>(() => OfBlocks().ToText(width)).ParamName);

    [Fact]
    public void A_sheet_is_asked_for() => Assert.Throws<ArgumentNullException>(() => ((FieldSheet)null!).ToMarkdown());

    [Fact]
    public void A_table_without_rows_shows_its_heads()
    {
        var sheet = OfBlocks(new SheetTable { Columns = ["kind", "lb"], Rows = [] });
        Assert.Equal($"Tiny\n====\n\nPart\n----\n\n  kind   lb\n{new string('\u2500', 13)}\n\n", sheet.ToText());
        Assert.Equal("# Tiny\n\n## Part\n\n| kind | lb |\n|---|---|\n", sheet.ToMarkdown());
    }

    [Fact]
    public void Columns_of_numbers_end_at_the_right_and_others_begin_at_the_left()
    {
        var sheet = OfBlocks(new SheetTable
        {
            Columns = ["kind", "lb"],
            Rows = [new SheetRow { Cells = ["oats", "1"] }, new SheetRow { Cells = ["rye", "12.5"] }, new SheetRow { Cells = ["pea", "-"] }],
        });
        Assert.Equal(["  kind     lb", new string('\u2500', 15), "  oats      1", "  rye    12.5", "  pea       -"], sheet.ToText().Split('\n')[6..11]);
    }

    [Fact]
    public void A_word_longer_than_the_page_is_cut_not_lost()
    {
        string word = new('x', 130);
        Assert.Equal([new string('x', 60), new string('x', 60), new string('x', 10)], OfBlocks(new SheetSentence { Text = word }).ToText(60).Split('\n')[5..8]);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Writing_does_not_follow_the_culture(string culture)
    {
        var sheet = Sheet();
        string plain = Everything(sheet);
        using var scope = new CultureScope(culture);
        Assert.Equal(plain, Everything(sheet));
    }

    private static string Everything(FieldSheet sheet) =>
        sheet.ToText(showWork: true) + sheet.ToMarkdown(showWork: true) + sheet.ToJson(showWork: true);
}
