namespace PlotAgronomy.Record;

/// <summary>Words of the sheets that were renamed since the record was made; digests are taken of the recorded words.</summary>
internal static class RenamedWords
{
    private static readonly (string Today, string Recorded)[] All = [];

    internal static string AsRecorded(string text) =>
        All.Aggregate(text, (soFar, word) => soFar.Replace(word.Today, word.Recorded, StringComparison.Ordinal));
}
