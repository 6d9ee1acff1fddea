using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>The page as a browser prints it.</summary>
[Trait("Category", "Slow")]
public class PrintedPageTests
{
    private const string NoBrowser = "No browser is installed (Debian's package chromium); printed pages were not looked at.";

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

    internal static string On(string paper, string html) => html.Replace("@page { margin", $"@page {{ size: {paper}; margin", StringComparison.Ordinal);
}
