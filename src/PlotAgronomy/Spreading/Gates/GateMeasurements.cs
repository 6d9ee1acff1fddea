using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>Brings measured gate points in order: by rising setting, repeats averaged, one reversal pooled.</summary>
internal static class GateMeasurements
{
    /// <returns>False when the flow falls more than once.</returns>
    internal static bool TrySort(
        string material,
        IReadOnlyList<GatePoint> points,
        out List<(double Setting, double Flow)> sorted,
        out Func<Finding>? pooled,
        out string problem
    )
    {
        problem = "";
        pooled = null;
        sorted = [];
        foreach (var repeats in points.OrderBy(p => p.Setting).GroupAlike((one, other) => one.Setting == other.Setting))
        {
            sorted.Add((repeats[0].Setting, repeats.Average(p => p.PoundsPerMinute)));
        }

        int reversal = FirstReversal(sorted);
        if (reversal == 0)
        {
            return true;
        }

        var (first, second) = (sorted[reversal - 1], sorted[reversal]);
        sorted.RemoveAt(reversal);
        sorted[reversal - 1] = ((first.Setting + second.Setting) / 2, (first.Flow + second.Flow) / 2);
        if (FirstReversal(sorted) is > 0 and int again)
        {
            problem =
                $"The flow of {material} falls more than once as the gate opens (again before setting "
                + $"{Amounts.Print(sorted[again].Setting, 3)}): measure again.";
            return false;
        }

        pooled = () =>
            FindingCatalog.Create(
                SpreadingCodes.GatePooled,
                ("material", material),
                ("low", Amounts.Print(first.Setting, 3)),
                ("high", Amounts.Print(second.Setting, 3))
            );
        return true;
    }

    private static int FirstReversal(List<(double Setting, double Flow)> sorted)
    {
        for (int i = 1; i < sorted.Count; i++)
        {
            if (!(sorted[i].Flow > sorted[i - 1].Flow))
            {
                return i;
            }
        }

        return 0;
    }
}
