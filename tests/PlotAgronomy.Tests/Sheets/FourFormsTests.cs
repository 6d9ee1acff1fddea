using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>Text, Markdown, HTML and JSON say the same of a plan: every figure, finding, question and step of one stands in the
/// others.</summary>
/// <remarks>Held form against form, each read by its own reader; letters and digits count, marks and line breaks do not.</remarks>
public partial class FourFormsTests
{
    /// <summary>So wide that no cell is broken.</summary>
    private const int Wide = 20_000;

    public static TheoryData<string> Plans =>
        [.. Files("samples/data", "*.json").Concat(Files("tests/PlotAgronomy.Tests/Plans", "p*.json"))];

    private static IEnumerable<string> Files(string folder, string names) =>
        Directory.GetFiles(Repository.PathOf(folder), names).Select(f => $"{folder}/{Path.GetFileName(f)}").Order(StringComparer.Ordinal);

    private sealed class Forms
    {
        internal Forms(string plan, bool showWork)
        {
            Answers = TwoPagesTests.Answers(plan);
            Sheet = FieldSheet.Of(Answers);
            Json = JsonDocument.Parse(Sheet.ToJson(showWork)).RootElement;
            Html = XDocument.Parse(Sheet.ToHtml(showWork).Replace("<!DOCTYPE html>", "", StringComparison.Ordinal));
            Text = SheetTextWriter.Write(Sheet, Wide, showWork);
            Markdown = Sheet.ToMarkdown(showWork);
            var main = Html.Descendants("main").Single();
            Others =
            [
                ("text", Bare(Text)),
                ("Markdown", Bare(Markdown)),
                ("HTML", Bare(string.Concat(main.DescendantNodes().Select(Said)))),
            ];
        }

        internal PlotAnswers Answers { get; }

        internal FieldSheet Sheet { get; }

        internal JsonElement Json { get; }

        internal XDocument Html { get; }

        internal string Text { get; }

        internal string Markdown { get; }

        /// <summary>The forms for a reader, letters and digits alone.</summary>
        internal (string Form, string Said)[] Others { get; }

        /// <summary>What JSON writes of the parts that are printed.</summary>
        internal IEnumerable<JsonElement> Sections(bool showWork) =>
            Json.GetProperty("sections").EnumerateArray().Where(s => showWork || s.GetProperty("part").GetString() != "work");

        private static string Said(XNode node) =>
            node switch
            {
                XText text => text.Value,
                XElement element => element.Attribute("data-code")?.Value ?? "",
                _ => "",
            };
    }

    private static string Bare(string text) => Marks().Replace(text, "");

    /// <summary>Every text of a JSON value but its schema words, numbers for programs and drawings.</summary>
    private static IEnumerable<string> Texts(JsonElement json, string? name = null) =>
        json.ValueKind switch
        {
            JsonValueKind.String when name is not ("block" or "part" or "id" or "svg" or "unit" or "status" or "sourceIds") => [json.GetString()!],
            JsonValueKind.Array => json.EnumerateArray().SelectMany(item => Texts(item, name)),
            JsonValueKind.Object => json.EnumerateObject().SelectMany(member => Texts(member.Value, member.Name)),
            _ => [],
        };

    private static void Holds(Forms forms, IEnumerable<string> pieces)
    {
        foreach (string piece in pieces.Distinct())
        {
            Assert.All(forms.Others, form => Assert.True(form.Said.Contains(Bare(piece), StringComparison.Ordinal), $"{form.Form} lacks: {piece}"));
        }
    }

    /// <summary>Figures with label and value, rows, steps, questions, remarks, sentences and headings, with the working.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void What_JSON_says_stands_in_the_others(string plan)
    {
        var forms = new Forms(plan, showWork: true);
        var pieces = forms.Sections(showWork: true).SelectMany(s => Texts(s)).ToList();
        Assert.InRange(pieces.Count, 50, 20_000);
        Holds(forms, pieces);
    }

    /// <summary>The other way round: no word of text, Markdown or HTML is unknown to JSON.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void What_the_others_say_stands_in_JSON(string plan)
    {
        var forms = new Forms(plan, showWork: false);
        var known = Words(string.Join(' ', forms.Sections(showWork: false).SelectMany(s => Texts(s)).Append(forms.Json.GetProperty("title").GetString()!))).ToHashSet(StringComparer.Ordinal);
        var steps = Enumerable.Range(1, forms.Sheet.Sections.SelectMany(s => s.Blocks).OfType<SheetSteps>().Max(s => s.Steps.Length)).Select(n => $"{n}");
        var main = forms.Html.Descendants("main").Single();
        string html = string.Join(' ', main.DescendantNodes().OfType<XText>().Select(t => t.Value));
        Assert.All(new[] { forms.Text, forms.Markdown, html }, said => Assert.Empty(Words(said).Except(known).Except(steps)));
    }

    /// <summary>As many steps, remarks, rows and figures in each.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Each_has_as_many_steps_rows_and_remarks(string plan)
    {
        var forms = new Forms(plan, showWork: false);
        var blocks = forms.Sections(showWork: false).SelectMany(s => s.GetProperty("blocks").EnumerateArray()).ToList();
        int Count(string kind, string? list = null) =>
            blocks.Where(b => b.GetProperty("block").GetString() == kind).Sum(b => list is null ? 1 : b.GetProperty(list).GetArrayLength());

        int steps = Count("steps", "steps"), rows = Count("table", "rows"), tables = Count("table"), remarks = Count("remarks", "remarks"), figures = Count("figure"), drawings = Count("drawing");
        var html = forms.Html.Descendants("main").Single();
        Assert.Equal(steps, html.Descendants("li").Count());
        Assert.Equal(rows, html.Descendants("tbody").Descendants("tr").Count());
        Assert.Equal(remarks, html.Descendants("table").Where(t => t.Attribute("class")!.Value == "remarks").Descendants("tr").Count());
        Assert.Equal(figures, html.Descendants("table").Where(t => t.Attribute("class")!.Value == "figures").Descendants("tr").Count());
        Assert.Equal(drawings, html.Descendants("img").Count());

        string[] lines = forms.Markdown.Split('\n');
        Assert.Equal(steps, lines.Count(l => StepOfMarkdown().IsMatch(l)));
        Assert.Equal(rows + (2 * tables), lines.Count(l => l.StartsWith('|')));
        Assert.Equal(remarks + figures, lines.Count(l => l.StartsWith("- ", StringComparison.Ordinal)));
        Assert.Equal(steps, forms.Text.Split('\n').Count(l => StepOfText().IsMatch(l)));
        Assert.Equal(tables, forms.Text.Split('\n').Count(l => l.Length > 1 && l.All(c => c == '\u2500')));
    }

    /// <summary>What JSON lists for programs is told to the reader too, by itself or joined with its like.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Every_finding_and_every_open_question_stands_in_each(string plan)
    {
        var forms = new Forms(plan, showWork: true);
        var written = forms.Json.GetProperty("findings").EnumerateArray().Select(f => f.GetProperty("text").GetString()!).ToList();
        Assert.Equal(forms.Sheet.Findings.Select(f => f.Text), written);
        foreach (var finding in forms.Sheet.Findings.Where(f => f.Code != "data-from-memory"))
        {
            string[] ways = [.. TwoPagesTests.Joined(forms.Answers, finding).Select(Bare)];
            Assert.All(forms.Others, form => Assert.True(ways.Any(way => form.Said.Contains(way, StringComparison.OrdinalIgnoreCase)), $"{form.Form} lacks: {finding.Text}"));
        }

        string json = Bare(string.Concat(forms.Sections(showWork: true).SelectMany(s => Texts(s))));
        foreach (var question in forms.Answers.Field.Asked.Select(s => s.Question))
        {
            Assert.All([.. forms.Others.Select(f => f.Said), json], said => Assert.Contains(Bare(question.Text), said, StringComparison.OrdinalIgnoreCase));
        }
    }

    /// <summary>A sheet that is found years later tells what it was made with, in every form and by the version of the package.</summary>
    [Theory]
    [InlineData("samples/data/fall-blend.json")]
    [InlineData("samples/data/clover-lots.json")]
    public void Each_ends_with_the_versions_it_was_made_with(string plan)
    {
        var forms = new Forms(plan, showWork: false);
        string version = XDocument.Load(Repository.PathOf("src/PlotAgronomy/PlotAgronomy.csproj")).Descendants("VersionPrefix").Single().Value;
        string line = $"Made with PlotAgronomy {version}, tables of {Source.DataVersion}.";
        Assert.EndsWith($"\n{line}\n", forms.Text, StringComparison.Ordinal);
        Assert.EndsWith($"\n{line}\n", forms.Markdown, StringComparison.Ordinal);
        Assert.Equal(line, forms.Html.Descendants("main").Single().Descendants("p").Last().Value);
        Assert.Equal(version, forms.Json.GetProperty("libraryVersion").GetString());
        Assert.Equal(Source.DataVersion, forms.Json.GetProperty("dataVersion").GetString());
        Assert.EndsWith($"\n{line}\n", FieldSheet.Of(forms.Answers.Plan.CompareSystems()).ToText(), StringComparison.Ordinal);
    }

    /// <summary>Words that hold a letter or a digit; signs of writing are not counted.</summary>
    private static IEnumerable<string> Words(string text) => Word().Matches(text).Select(m => m.Value);

    [GeneratedRegex(@"[^\p{L}\p{Nd}]+")]
    private static partial Regex Marks();

    [GeneratedRegex(@"[\p{L}\p{Nd}]+")]
    private static partial Regex Word();

    [GeneratedRegex(@"^\d+\. ")]
    private static partial Regex StepOfMarkdown();

    [GeneratedRegex(@"^ {2}\d+\. +\S")]
    private static partial Regex StepOfText();
}
