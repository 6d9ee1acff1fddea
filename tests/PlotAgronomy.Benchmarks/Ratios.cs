using System.Globalization;

namespace PlotAgronomy.Benchmarks;

/// <summary>Columns, loops by hand and typed calls by <see cref="Turns"/>.</summary>
internal static class Ratios
{
    /// <summary>Prints the ways of 500,000 reports: ns a row, best and median, the ratio to the first way of a group, bytes a row.</summary>
    internal static void Print()
    {
        var many = new ManyReports(500_000, 20_000);
        var spreaders = new SpreaderRuns(500_000);
        var stands = new SeedStands(500_000);
        Print("lime", many.Rows, ("by hand", many.LimesByHand), ("as column", () => many.Limes(0, many.Rows)));
        Print("phosphate", many.Rows, ("by hand", many.PhosphatesByHand), ("as column", () => many.Phosphates(0, many.Rows)));
        Print("potash", many.Rows, ("by hand", many.PotashesByHand), ("as column", () => many.Potashes(0, many.Rows)));
        Print("lime + P + K", many.Rows, ("by hand", many.ByHand), ("as columns", many.AsColumns), ("in blocks", many.AsColumnsByBlocks), ("by two threads", many.AsColumnsByTwoThreads));
        Print("spreader", spreaders.Rows, ("by hand", spreaders.ByHand), ("as column", spreaders.AsColumn));
        Print("seed density", stands.Rows, ("by hand", stands.ByHand), ("as column", stands.AsColumn));
        Print("typed, lime + P + K", many.Typed, ("one thread", () => many.TypedCalls()), ("two threads", () => many.TypedCallsByTwoThreads()));
        Print("typed, a call for each", many.Typed, ("lime", () => many.TypedLimes()), ("P and K", () => many.TypedNeeds()));
    }

    private static void Print(string what, int rows, params (string Name, Action Run)[] ways)
    {
        var times = Turns.Of([.. ways.Select(way => (way.Run, rows))]);
        foreach (var (way, time) in ways.Zip(times))
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{what,-24}{way.Name,-16}best {time.Best,8:0.00} ns, median {time.Median,8:0.00} ns, ratio {time.ToTheFirst,6:0.00}, {time.Bytes,8:0.0} B a row"
                )
            );
        }
    }
}
