using System.Globalization;

namespace PlotAgronomy.Columns;

/// <summary>Checks the spans of a column once, before its first row.</summary>
/// <remarks>All spans of a call have the same length; no rows are no error. What is written may lie nowhere in what is read: a
/// row answered would change a row to come.</remarks>
internal static class ColumnSpans
{
    internal static void SameLength(int rows, int length, string name)
    {
        if (length != rows)
        {
            throw new ArgumentException(
                string.Create(CultureInfo.InvariantCulture, $"Must have {rows} rows like the first column; has {length}."),
                name
            );
        }
    }

    /// <summary>The three columns that a call writes.</summary>
    internal static void Written(int rows, int answers, int status, int flags, string nameOfAnswers)
    {
        SameLength(rows, answers, nameOfAnswers);
        SameLength(rows, status, nameof(status));
        SameLength(rows, flags, nameof(flags));
    }

    /// <summary>A column that may be left out, as an empty span.</summary>
    internal static void SameLengthOrNone(int rows, int length, string name) => SameLength(length == 0 ? 0 : rows, length, name);

    internal static void Apart<T>(ReadOnlySpan<T> read, ReadOnlySpan<T> written, string name)
    {
        if (read.Overlaps(written))
        {
            throw new ArgumentException("Must not lie over another column of the call: hand in memory of its own.", name);
        }
    }
}
