using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>What is carried to the field is short, in the order of the work, and no warning is left off it.</summary>
/// <remarks>Limits: what a person carries and reads in the field (practice).</remarks>
public class TwoPagesTests
{
    private const int MostLines = 120;
    private const int Width = 96;
    private const int MostAskedAndWatched = 7;

    internal static readonly string[] Demos = ["clover-lots", "county-report", "fall-blend", "frost-seeding", "printed-rate", "strip-reading"];

    public static TheoryData<string> Plans =>
        [
            .. Demos.Select(d => $"samples/data/{d}.json"),
            .. Directory.GetFiles(Repository.PathOf("tests/PlotAgronomy.Tests/Plans"), "p*.json").Select(f => $"tests/PlotAgronomy.Tests/Plans/{Path.GetFileName(f)}").Order(StringComparer.Ordinal),
        ];

    internal static PlotAnswers Answers(string plan) => PlanFile.Read(File.ReadAllText(Repository.PathOf(plan))).Plan!.Solve();

    [Theory, MemberData(nameof(Plans))]
    public void As_text_the_front_has_at_most_120_lines_of_96(string plan)
    {
        string front = Front(Answers(plan), Width);
        Assert.InRange(front.Split('\n').Length, 20, MostLines);
        Assert.All(front.Split('\n'), line => Assert.InRange(line.Length, 0, Width));
    }

    [Theory, MemberData(nameof(Plans))]
    public void Every_warning_stands_on_the_front(string plan)
    {
        var answers = Answers(plan);
        string front = Flat(Front(answers, 200));
        Assert.All(answers.Findings.Where(f => f.Severity == FindingSeverity.Warning), f => Assert.Contains(Joined(answers, f), t => front.Contains(Flat(t), StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>More than seven only where that many warnings have no other place.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Few_lines_are_asked_and_watched(string plan)
    {
        var field = Answers(plan).Field;
        int lines = field.Asked.Length + (field.Weakest is null ? 0 : 1) + field.Watched.Length;
        Assert.True(lines <= MostAskedAndWatched || field.Watched.All(f => f.Severity == FindingSeverity.Warning), $"{lines} lines");
        Assert.InRange(field.Watched.Count(f => f.Severity != FindingSeverity.Warning), 0, 5);
    }

    /// <summary>Nothing is dropped: what is not said with the work is said behind it, or with the working.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Every_finding_is_said_and_none_twice(string plan)
    {
        var answers = Answers(plan);
        string all = Flat(FieldSheet.Of(answers).ToText(200, showWork: true));
        Assert.All(answers.Findings.Where(f => f.Code != "data-from-memory"), f => Assert.True(Joined(answers, f).Any(t => all.Contains(Flat(t), StringComparison.OrdinalIgnoreCase)), f.Text));
        string[] said = [.. FieldSheet.Of(answers).Sections.SelectMany(s => s.Blocks).OfType<SheetRemarks>().SelectMany(r => r.Remarks).Select(r => r.Text).Where(t => t.Length > 40)];
        Assert.Empty(said.GroupBy(t => t).Where(alike => alike.Count() > 1).Select(alike => alike.Key));
    }

    /// <summary>The parts a person goes through, first to last; none is left out that the plan has anything to say in.</summary>
    [Fact]
    public void The_front_is_in_the_order_of_the_work() =>
        Assert.Equal(
            ["verdict", "ask", "buy", "do", "spread", "after", "watch", "write-down"],
            FieldSheet.Of(Answers("samples/data/fall-blend.json")).Sections.Where(s => s.Part == SheetPart.Front).Select(s => s.Id));

    [Theory, MemberData(nameof(Plans))]
    public void Front_comes_before_back_and_back_before_working(string plan)
    {
        var parts = FieldSheet.Of(Answers(plan)).Sections.Select(s => s.Part).ToList();
        Assert.Equal(parts.Order(), parts);
        Assert.DoesNotContain(SheetPart.Body, parts);
    }

    [Theory, MemberData(nameof(Plans))]
    public void No_code_stands_between_the_rows_of_the_front(string plan)
    {
        var sheet = FieldSheet.Of(Answers(plan));
        string front = Front(sheet, Width);
        Assert.All(sheet.Figures, f => Assert.DoesNotContain(f.Code, front.Split((char[]?)null)));
        Assert.Contains("buy.all", sheet.ToText(Width, showWork: true), StringComparison.Ordinal);
        Assert.Contains("\"buy.all\"", sheet.ToJson(), StringComparison.Ordinal);
    }

    /// <summary>Water near by is a matter of safety, whatever it changes on the sheet.</summary>
    [Fact]
    public void Where_fertilizer_is_spread_it_is_asked_whether_water_is_near()
    {
        var step = Answers("samples/data/fall-blend.json").Field.Steps.Single(s => !s.Asked.IsEmpty);
        Assert.Equal("fertilizer-ask-water", Assert.Single(step.Asked).Code);
        Assert.Contains("Ask first: Does a ditch, stream, pond or well", Flat(Front(Answers("samples/data/fall-blend.json"), Width)), StringComparison.Ordinal);
    }

    /// <summary>By hand: 766.5 lb of lime in a hopper of 3 gal, which holds 24 lb of it, are 32 fillings; more than twelve are too many.</summary>
    [Fact]
    public void A_spreader_that_cannot_is_told_so()
    {
        var answers = Answers("samples/data/fall-blend.json");
        Assert.Contains(answers.Findings, f => f.Code == "spread-many-fillings");
        string front = Flat(Front(answers, 200));
        Assert.Contains("not with this spreader", front, StringComparison.Ordinal);
        Assert.Contains("is 32 fillings of this hopper", front, StringComparison.Ordinal);
    }

    /// <summary>Texts of a person's day: no small letter after a full stop.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void A_sentence_begins_with_a_capital(string plan)
    {
        var remarks = FieldSheet.Of(Answers(plan)).Sections.Where(s => s.Part == SheetPart.Front).SelectMany(s => s.Blocks).OfType<SheetRemarks>().SelectMany(r => r.Remarks);
        Assert.All(remarks, r => Assert.DoesNotMatch(@"[a-z]{2}\. [a-z]", r.Text));
    }

    internal static string Front(PlotAnswers answers, int width) => Front(FieldSheet.Of(answers), width);

    private static string Front(FieldSheet sheet, int width) =>
        new FieldSheet { Title = sheet.Title, Sections = [.. sheet.Sections.Where(s => s.Part == SheetPart.Front)], Findings = sheet.Findings, Sources = sheet.Sources }.ToText(width).TrimEnd('\n');

    /// <summary>Its own text, and the text it has where it is told of several things at once.</summary>
    internal static IEnumerable<string> Joined(PlotAnswers answers, Finding finding) =>
        AlikeFindings.Joined(answers.Findings.Where(f => f.WithoutSubject == finding.WithoutSubject)).Append(finding).Select(f => SheetText.Bare(f).TrimEnd('.'));

    private static string Flat(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
