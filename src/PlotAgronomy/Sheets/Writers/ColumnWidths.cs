namespace PlotAgronomy.Sheets;

/// <summary>Shares the room of a line among columns: the widest give way first, those that must not wrap only at the
/// last.</summary>
internal static class ColumnWidths
{
    /// <param name="wanted">Width of each column's longest line.</param>
    /// <param name="mayWrap">Whether a column's text may be broken.</param>
    /// <param name="room">Columns of text there are for all together.</param>
    /// <returns>The widths; at least 1 each.</returns>
    internal static int[] Fit(ReadOnlySpan<int> wanted, ReadOnlySpan<bool> mayWrap, int room)
    {
        int[] widths = wanted.ToArray();
        for (int excess = widths.Sum() - room; excess > 0; excess = widths.Sum() - room)
        {
            var widest = Widest(widths, mayWrap, out int next);
            if (widest.Count == 0)
            {
                break;
            }

            TakeAlike(widths, widest, excess, widths[widest[0]] - next);
        }

        int missing = widths.Sum() - room;
        if (missing > 0)
        {
            TakeAlike(widths, [.. Enumerable.Range(0, widths.Length)], missing, int.MaxValue);
        }

        return widths;
    }

    /// <summary>The widest columns that may wrap, and the width at which the next would give way with them.</summary>
    private static List<int> Widest(int[] widths, ReadOnlySpan<bool> mayWrap, out int next)
    {
        int most = 1;
        for (int i = 0; i < widths.Length; i++)
        {
            most = mayWrap[i] ? Math.Max(most, widths[i]) : most;
        }

        var widest = new List<int>();
        next = 1;
        for (int i = 0; i < widths.Length; i++)
        {
            if (!mayWrap[i] || widths[i] <= 1)
            {
                continue;
            }

            if (widths[i] == most)
            {
                widest.Add(i);
            }
            else
            {
                next = Math.Max(next, widths[i]);
            }
        }

        return widest;
    }

    /// <summary>Takes an excess from columns in equal parts, from none more than so much, and leaves each at least 1.</summary>
    private static void TakeAlike(int[] widths, List<int> columns, int excess, int mostOfEach)
    {
        int left = columns.Count;
        foreach (int column in columns)
        {
            int taken = Math.Max(Math.Min(Math.Min(excess / left, mostOfEach), widths[column] - 1), 0);
            widths[column] -= taken;
            excess -= taken;
            left--;
        }
    }
}
