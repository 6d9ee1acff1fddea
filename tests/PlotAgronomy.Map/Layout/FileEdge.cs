namespace PlotAgronomy.Map.Layout;

/// <summary>One file uses another, with the short names of what it uses there.</summary>
internal sealed record FileEdge(string From, string To, IReadOnlyList<string> Used);
