namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Numbers drawn anew for each row.</summary>
internal static class Drawn
{
    internal static double[] Between(int seed, double least, double most, int rows)
    {
        var random = new Random(seed);
        return [.. Enumerable.Range(0, rows).Select(_ => least + ((most - least) * random.NextDouble()))];
    }
}
