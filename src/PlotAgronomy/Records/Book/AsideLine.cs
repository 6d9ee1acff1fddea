namespace PlotAgronomy.Records;

/// <summary>A line that is no entry, kept as it stands.</summary>
/// <param name="Text">The line.</param>
/// <param name="Problem">Place and problem.</param>
/// <param name="IsTorn">Whether it is the last line and has no end: writing it was broken off.</param>
internal sealed record AsideLine(string Text, string Problem, bool IsTorn);
