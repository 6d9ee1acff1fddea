namespace PlotAgronomy.Record;

/// <summary>Words of the sheets that were renamed since the record was made; digests are taken of the recorded words.</summary>
internal static class RenamedWords
{
    private static readonly (string Today, string Recorded)[] All =
    [
        ("Ohio/Indiana/Michigan", "Ohio/Indiana/Michigan 1995"),
        ("(common practice)", "(rule for weakly buffered soil)"),
        ("Mehlich-3 colorimetric", "Mehlich-3 by colour"),
        ("Mehlich-3 ICP", "Mehlich-3 by ICP"),
    ];

    internal static string AsRecorded(string text) =>
        All.Aggregate(text, (soFar, word) => soFar.Replace(word.Today, word.Recorded, StringComparison.Ordinal));
}
