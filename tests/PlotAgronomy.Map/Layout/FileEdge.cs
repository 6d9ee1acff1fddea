namespace PlotAgronomy.Map.Layout;

/// <summary>One file uses another, with what it uses there: members first, then types.</summary>
internal sealed record FileEdge(string From, string To, IReadOnlyList<FileUse> Used);
