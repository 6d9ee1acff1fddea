using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Planning;

/// <summary>Open questions under an answer of which a kind that is to be sown may not be.</summary>
internal static class DecidingQuestions
{
    private static readonly Lazy<ILookup<string, string>> Asked = Table.Grouped(
        "Planning/Data/deciding.csv",
        row => row.Text("code"),
        row => row.Text("asked")
    );

    /// <summary>What must be known first, in a few words each, most at stake first; none where the verdict stands.</summary>
    internal static ImmutableArray<string> Of(PlotAnswers answers)
    {
        var sown = answers.Verdict.Told.Sown.Select(v => v.Planned.Kind).ToList();
        return sown.Count == 0
            ? []
            :
            [
                .. answers
                    .Verdict.Questions.Take(answers.Verdict.State == AnswerState.Open ? 1 : 0)
                    .Concat(answers.Stakes.Questions.Where(q => q.Undecided.Any(sown.Contains)).Select(q => q.Question))
                    .SelectMany(q => Asked.Value[q.Code])
                    .Distinct(),
            ];
    }
}
