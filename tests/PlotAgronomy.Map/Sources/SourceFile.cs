namespace PlotAgronomy.Map.Sources;

/// <summary>One file of code: its path from the root of the repository, with forward slashes, and its text.</summary>
internal sealed record SourceFile(string Path, string Text);
