using PlotAgronomy.FieldQuestions;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleQuestions;

/// <summary>The short programs of <c>samples/PlotAgronomy.FieldQuestions</c> against their approved outputs. That the outputs stand
/// still is all these tests say; the numbers are held by the tests of their rooms.</summary>
public class FieldQuestionTests
{
    private const int MostLines = 60;

    private static readonly string Folder = Repository.PathOf("samples/PlotAgronomy.FieldQuestions");

    public static TheoryData<string> Words => [.. AllQuestions.List.Select(q => q.Word)];

    [Theory, MemberData(nameof(Words))]
    public void A_question_is_answered_as_approved(string word)
    {
        using var said = new StringWriter { NewLine = "\n" };
        AllQuestions.List.Single(q => q.Word == word).Answer(said);
        ApprovedText.AssertCurrent(Path.Combine(Folder, "Approved", $"{word}.txt"), said.ToString());
    }

    [Fact]
    public void Every_approved_answer_has_its_question() =>
        Assert.Equal(
            AllQuestions.List.Select(q => $"{q.Word}.txt").Order(StringComparer.Ordinal),
            Directory.GetFiles(Path.Combine(Folder, "Approved")).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)
        );

    [Fact]
    public void The_page_lists_every_question() =>
        Assert.Equal(
            AllQuestions.List.Select(q => $"| `{q.Word}` | {q.Asked} |"),
            File.ReadAllLines(Repository.PathOf("docs/field-questions.md")).Where(line => line.StartsWith("| `", StringComparison.Ordinal))
        );

    [Fact]
    public void An_answer_is_short() =>
        Assert.All(
            Directory.GetFiles(Path.Combine(Folder, "Questions"), "*.cs", SearchOption.AllDirectories),
            file => Assert.InRange(File.ReadAllLines(file).Length, 1, MostLines)
        );
}
