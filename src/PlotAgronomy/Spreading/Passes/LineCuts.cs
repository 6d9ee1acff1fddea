namespace PlotAgronomy.Spreading;

/// <summary>Stretches of one line: joined, and what of some lies in none of others.</summary>
internal static class LineCuts
{
    /// <summary>The same ground in stretches that do not overlap, from low to high.</summary>
    internal static List<(double Low, double High)> Joined((double Low, double High)[] stretches)
    {
        Array.Sort(stretches);
        var joined = new List<(double Low, double High)>();
        foreach (var stretch in stretches)
        {
            if (stretch.High <= stretch.Low)
            {
                continue;
            }

            if (joined.Count > 0 && stretch.Low <= joined[^1].High)
            {
                joined[^1] = (joined[^1].Low, Math.Max(joined[^1].High, stretch.High));
            }
            else
            {
                joined.Add(stretch);
            }
        }

        return joined;
    }

    /// <summary>Length of some stretches that lies in none of others; each from low to high without overlap.</summary>
    internal static double Without(
        IReadOnlyList<(double Low, double High)> stretches,
        IReadOnlyList<(double Low, double High)> others
    )
    {
        double length = 0;
        int first = 0;
        foreach (var (low, high) in stretches)
        {
            while (first < others.Count && others[first].High <= low)
            {
                first++;
            }

            length += high - low;
            for (int i = first; i < others.Count && others[i].Low < high; i++)
            {
                length -= Math.Min(high, others[i].High) - Math.Max(low, others[i].Low);
            }
        }

        return length;
    }
}
