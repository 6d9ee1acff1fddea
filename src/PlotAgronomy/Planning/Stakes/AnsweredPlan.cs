namespace PlotAgronomy.Planning;

/// <summary>A plan into which one answer was put.</summary>
/// <param name="Value">The answer.</param>
/// <param name="InWords">The answer in words.</param>
/// <param name="Plan">The plan that holds it.</param>
internal sealed record AnsweredPlan(object Value, string InWords, PlotPlan Plan);
