using System.Globalization;
using System.Text.RegularExpressions;
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

    /// <summary>Eight kinds, thirteen purchases: what is carried stays on two pages, what is behind it goes on to a third.</summary>
    [Theory, InlineData("letter"), InlineData("A4")]
    public void Eight_kinds_stay_on_two_pages_and_their_numbers_go_on_to_a_third(string paper)
    {
        Assert.SkipUnless(Browser.IsInstalled, NoBrowser);
        var answers = EightKinds().Solve();
        Assert.True(answers.Seed.Value.Kinds.Length >= 8);
        var sheet = FieldSheet.Of(answers);
        var front = new FieldSheet { Title = sheet.Title, Sections = [.. sheet.Sections.Where(s => s.Part == SheetPart.Front)], Findings = [], Sources = [] };
        Assert.InRange(Browser.PagesOf(Browser.Print(On(paper, front.ToHtml()))), 1, 2);
        Assert.InRange(Browser.PagesOf(Browser.Print(On(paper, sheet.ToHtml()))), 2, 3);
    }

    private static PlotPlan EightKinds()
    {
        var plan = FieldSheetWritingTests.Plan("fall-blend");
        var more = FieldSheetWritingTests.Plan("store-blend").SeedOffers.Concat(FieldSheetWritingTests.Plan("frost-seeding").SeedOffers)
            .Where(o => plan.Kinds.All(k => k.Kind != o.Item.Kind)).DistinctBy(o => o.Item.Kind).Take(2)
            .Select(o => new PlannedKind { Share = KindShare.FromShare(o.Item.Kind, 0.05), Offer = o });
        return plan with { Kinds = [.. plan.Kinds, .. more], Report = plan.Report! with { WaterPh = WaterPh.FromValue(6.2) } };
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
