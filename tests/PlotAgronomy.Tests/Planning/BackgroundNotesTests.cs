using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Planning;

/// <summary>What the sheet says of the findings, and where.</summary>
public class BackgroundNotesTests
{
    private static readonly string[] Plans =
    [
        "samples/data/clover-lots.json", "samples/data/fall-blend.json", "samples/data/frost-seeding.json",
        .. Directory.EnumerateFiles(Repository.PathOf("tests/PlotAgronomy.Tests/Plans"), "p*.json").Order(StringComparer.Ordinal),
    ];

    private static IEnumerable<PlotAnswers> Answers => Plans.Select(f => PlanFile.Read(File.ReadAllText(Repository.PathOf(f))).Plan!.Solve());

    [Fact]
    public void Every_note_behind_the_working_is_a_known_finding_and_no_warning()
    {
        var templates = FindingCatalog.Templates.ToDictionary(t => t.Code);
        Assert.All(BackgroundNotes.AllCodes, code => Assert.True(templates[code].Severity != FindingSeverity.Warning, code));
    }

    [Fact]
    public void Notes_that_change_nothing_stay_in_the_answers_and_are_printed_with_the_working_alone()
    {
        int seen = 0;
        foreach (var answers in Answers)
        {
            var sheet = FieldSheet.Of(answers);
            string plain = sheet.ToMarkdown(), work = sheet.ToMarkdown(showWork: true);
            foreach (var note in answers.Background)
            {
                seen++;
                Assert.Contains(note, answers.Findings);
                Assert.Contains(note, sheet.Findings);
                Assert.DoesNotContain($"[{note.Code}]", plain, StringComparison.Ordinal);
                Assert.Contains($"[{note.Code}]", work, StringComparison.Ordinal);
            }
        }

        Assert.True(seen > 10, $"{seen} notes");
    }

    [Fact]
    public void What_is_said_of_several_kinds_is_said_once()
    {
        foreach (var answers in Answers)
        {
            var said = answers.ToSay;
            Assert.Equal(said.Select(f => f.WithoutSubject).Distinct().Count(), said.Length);
            Assert.Empty(answers.Findings.Except(answers.Background).Where(f => said.All(s => s.Code != f.Code)));
        }
    }

    [Fact]
    public void No_sentence_stands_twice_on_a_sheet()
    {
        foreach (var answers in Answers)
        {
            var said = FieldSheet.Of(answers).Sections.Where(s => s.Part != SheetPart.Work).SelectMany(s => s.Blocks).OfType<SheetRemarks>().SelectMany(r => r.Remarks).Select(r => r.Text).ToList();
            Assert.Equal(said.Distinct(), said);
        }
    }
}
