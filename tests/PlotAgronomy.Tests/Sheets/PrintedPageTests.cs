using System.Globalization;
using System.Text.RegularExpressions;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>The page as a browser prints it.</summary>
/// <remarks>Limits: what is read at arm's length in the field (practice).</remarks>
[Trait("Category", "Slow")]
public partial class PrintedPageTests
{
    internal const string NoBrowser = "No browser is installed (Debian's package chromium); printed pages were not looked at.";

    [Theory, InlineData("letter"), InlineData("A4")]
    public void A_short_sheet_is_one_page(string paper)
    {
        Assert.SkipUnless(Browser.IsInstalled, NoBrowser);
        var sheet = FieldSheetWritingTests.OfBlocks(new SheetSentence { Text = "Sow just ahead of rain." });
        Assert.Equal(1, Browser.PagesOf(Browser.Print(On(paper, sheet.ToHtml()))));
    }

    [Theory, InlineData("letter"), InlineData("A4")]
    public void A_sheet_that_is_too_long_goes_on_and_loses_nothing(string paper)
    {
        Assert.SkipUnless(Browser.IsInstalled, NoBrowser);
        var sheet = FieldSheetWritingTests.OfBlocks([.. Enumerable.Range(0, 150).Select(i => new SheetSentence { Text = $"Sentence {i}." })]);
        Assert.InRange(Browser.PagesOf(Browser.Print(On(paper, sheet.ToHtml()))), 3, 5);
    }

    [Theory, MemberData(nameof(TwoPagesTests.Plans), MemberType = typeof(TwoPagesTests))]
    public void A_plan_is_two_pages_on_letter_and_on_A4(string plan)
    {
        Assert.SkipUnless(Browser.IsInstalled, NoBrowser);
        string html = FieldSheet.Of(TwoPagesTests.Answers(plan)).ToHtml();
        Assert.InRange(Browser.PagesOf(Browser.Print(On("letter", html))), 1, 2);
        Assert.InRange(Browser.PagesOf(Browser.Print(On("A4", html))), 1, 2);
    }

    private const string EightKinds = "tests/PlotAgronomy.Tests/Sheets/eight-kinds.json";

    /// <summary>Eight kinds in four passes beside one of lime and two of fertilizer, eight lines bought and three from the shed: front and back on two pages.</summary>
    [Theory, InlineData("letter"), InlineData("A4")]
    public void Eight_kinds_in_four_passes_are_two_pages(string paper)
    {
        Assert.SkipUnless(Browser.IsInstalled, NoBrowser);
        var answers = TwoPagesTests.Answers(EightKinds);
        Assert.Equal(8, answers.Seed.Value.Kinds.Length);
        Assert.Equal(4, answers.Spreading.Value.Passes.Length);
        Assert.Equal(7, answers.Field.Walks.Length);
        Assert.DoesNotContain(answers.Field.Walks, w => w.Pass.IsTooMany);
        var rows = FieldSheet.Of(answers).Sections.Single(s => s.Id == "buy").Blocks.OfType<SheetTable>().Single().Rows;
        Assert.Equal((8, 3), (rows.SkipLast(1).Count(r => r.Cells[1] == "-"), rows.SkipLast(1).Count(r => r.Cells[2] == "-")));
        Assert.InRange(Browser.PagesOf(Browser.Print(On(paper, FieldSheet.Of(answers).ToHtml()))), 1, 2);
    }

    /// <summary>Sixteen kinds: more paper, the same letters, and each of them named.</summary>
    [Theory, InlineData("letter"), InlineData("A4")]
    public void What_is_more_goes_on_to_a_third_page_and_nothing_is_dropped_or_shrunk(string paper)
    {
        Assert.SkipUnless(Browser.IsInstalled, NoBrowser);
        var plan = SixteenKinds();
        string html = FieldSheet.Of(plan.Solve()).ToHtml();
        Assert.InRange(Browser.PagesOf(Browser.Print(On(paper, html))), 3, 4);
        Assert.Contains($"<style>\n{PageStyle.Text}</style>", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("zoom|scale|max-height|display: none", PageStyle.Text);
        Assert.All(plan.Kinds, k => Assert.Contains(k.Kind.ShortName, html, StringComparison.Ordinal));
    }

    private static PlotPlan SixteenKinds()
    {
        var plan = PlanFile.Read(File.ReadAllText(Repository.PathOf(EightKinds))).Plan!;
        var lot = plan.SeedOffers[1].Item;
        var more = new[] { "barley", "alfalfa", "alsike-clover", "birdsfoot-trefoil", "forage-turnip", "rape-dwarf-essex", "orchardgrass", "annual-ryegrass" }
            .Select(KindCatalog.Standard.Find)
            .Select((kind, i) => new PlannedKind { Share = KindShare.FromShare(kind, 0.05), Offer = Offer.InBags(lot with { Kind = kind, Label = $"M-{i}" }, UnitsNet.Mass.FromPounds(5), 12) });
        return plan with { Kinds = [.. plan.Kinds, .. more] };
    }

    /// <summary>Body at least 10 pt, tables 9 pt, margins 12 mm, drawing 70 mm.</summary>
    [Fact]
    public void Nothing_is_printed_smaller_than_it_can_be_read()
    {
        string style = PageStyle.Text;
        Assert.All(Points().Matches(style), m => Assert.True(double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) >= 9, m.Value));
        Assert.Contains("body { font: 10pt", style, StringComparison.Ordinal);
        Assert.True(Millimetres(style, "@page { margin: ") >= 12);
        Assert.True(Millimetres(style, "img { width: ") >= 70);
        Assert.True(Millimetres(style, "figure { float: right; width: ") >= 70);
    }

    private static double Millimetres(string style, string after)
    {
        int start = style.IndexOf(after, StringComparison.Ordinal) + after.Length;
        return double.Parse(style[start..style.IndexOf("mm", start, StringComparison.Ordinal)], CultureInfo.InvariantCulture);
    }

    internal static string On(string paper, string html) => html.Replace("@page { margin", $"@page {{ size: {paper}; margin", StringComparison.Ordinal);

    [GeneratedRegex(@"font(?:-size)?: ([0-9.]+)pt")]
    private static partial Regex Points();
}
