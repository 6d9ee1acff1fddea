using System.Text.RegularExpressions;
using System.Xml.Linq;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>One page that prints by itself.</summary>
public partial class SheetHtmlTests
{
    public static TheoryData<string> Sheets => SheetJsonTests.Sheets;

    private static XDocument Page(string html) => XDocument.Parse(html.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal));

    [Theory, MemberData(nameof(Sheets))]
    public void The_page_is_well_formed_and_ids_stand_once(string name)
    {
        var ids = Page(SheetJsonTests.Sheet(name).ToHtml(showWork: true)).Descendants().Attributes("id").Select(a => a.Value).ToList();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Count, ids.Distinct().Count());
    }

    [Theory, MemberData(nameof(Sheets))]
    public void Nothing_is_fetched_and_nothing_runs(string name)
    {
        var page = Page(SheetJsonTests.Sheet(name).ToHtml());
        Assert.Empty(page.Descendants().Where(e => e.Name.LocalName is "script" or "link" or "iframe" or "object" or "a"));
        Assert.All(page.Descendants().Attributes().Where(a => a.Name.LocalName is "src" or "href"), a => Assert.StartsWith("data:image/svg+xml;base64,", a.Value, StringComparison.Ordinal));
        Assert.DoesNotContain("url(", string.Concat(page.Descendants("style").Select(s => s.Value)), StringComparison.Ordinal);
    }

    /// <summary>Markdown has the codes of the figures besides, and marks of its own.</summary>
    [Theory, MemberData(nameof(Sheets))]
    public void It_says_what_the_text_says(string name)
    {
        var sheet = SheetJsonTests.Sheet(name);
        var body = Page(sheet.ToHtml()).Descendants("main").Single();
        var said = WordsIn(string.Join(' ', body.DescendantNodes().OfType<XText>().Select(t => t.Value)));
        var codes = body.Descendants("section").Where(s => s.Attribute("class")!.Value != "front").Descendants().Attributes("data-code").SelectMany(a => WordsIn(a.Value));
        Assert.Equal(WordsIn(sheet.ToText(200)), [.. said.Concat(codes).Concat(Numbered(sheet)).Order(StringComparer.Ordinal)]);
    }

    [Fact]
    public void What_looks_like_markup_is_text()
    {
        const string name = "a <b>&amp; \"c\" 'd'";
        string html = FieldSheetWritingTests.OfBlocks(new SheetSentence { Text = name }).ToHtml();
        Assert.Contains(name, Page(html).Descendants("p").Select(p => p.Value));
    }

    [Fact]
    public void A_drawing_lies_in_the_page_and_its_caption_in_every_form()
    {
        var sheet = FieldSheetWritingTests.OfBlocks(new SheetDrawing { Svg = "<svg xmlns=\"http://www.w3.org/2000/svg\"/>", Caption = "Nine passes." });
        string source = Page(sheet.ToHtml()).Descendants("img").Single().Attribute("src")!.Value;
        Assert.Equal("<svg xmlns=\"http://www.w3.org/2000/svg\"/>", System.Text.Encoding.UTF8.GetString(Convert.FromBase64String(source[(source.IndexOf(',', StringComparison.Ordinal) + 1)..])));
        Assert.All([sheet.ToText(), sheet.ToMarkdown(), sheet.ToJson(), sheet.ToHtml()], form => Assert.Contains("Nine passes.", form, StringComparison.Ordinal));
    }

    /// <summary>The list numbers its steps by itself.</summary>
    private static IEnumerable<string> Numbered(FieldSheet sheet) =>
        sheet.Sections.SelectMany(s => s.Blocks).OfType<SheetSteps>().SelectMany(s => Enumerable.Range(1, s.Steps.Length)).Select(n => n.ToString(System.Globalization.CultureInfo.InvariantCulture));

    private static List<string> WordsIn(string text) => [.. Word().Matches(text).Select(m => m.Value).Order(StringComparer.Ordinal)];

    [GeneratedRegex("[\\p{L}\\p{N}]+")]
    private static partial Regex Word();
}
