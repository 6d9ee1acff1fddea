namespace PlotAgronomy.Record;

/// <summary>One value of one case.</summary>
internal readonly record struct RecordedRow(string Case, string Meaning, string Value);
