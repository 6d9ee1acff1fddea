using PlotAgronomy.FieldQuestions.Spreading;

namespace PlotAgronomy.FieldQuestions;

/// <summary>The questions that can be asked by their word.</summary>
internal static class AllQuestions
{
    internal static IReadOnlyList<FieldQuestion> List { get; } =
    [
        new("trays", "How far apart may my passes be, and what do I lose at the edge?", Trays.Answer),
    ];
}
