using System.Collections.Immutable;
using MathNet.Numerics.Distributions;

namespace PlotAgronomy.Records;

/// <summary>The range in which the true mean of counts lies with 95 %.</summary>
/// <remarks>The exact range of a Poisson count, widened where hoops differ by more than chance alone makes them, and the more the
/// fewer hoops tell how much that is.</remarks>
internal static class CountInterval
{
    /// <summary>Low and high of the mean count of a hoop.</summary>
    internal static (double Low, double High) OfMean(ImmutableArray<int> counts)
    {
        double spread = Spread(counts);
        double total = counts.Sum(n => (double)n) / spread;
        return (Low(total) * spread / counts.Length, High(total) * spread / counts.Length);
    }

    /// <summary>Variance of the counts against that of chance alone, raised as Student's range is above the normal one; at least
    /// 1.</summary>
    private static double Spread(ImmutableArray<int> counts)
    {
        double mean = counts.Average();
        int freedom = counts.Length - 1;
        if (freedom == 0 || mean <= 0)
        {
            return 1;
        }

        double raised = StudentT.InvCDF(0, 1, freedom, 1 - Tail) / Normal.InvCDF(0, 1, 1 - Tail);
        return Math.Max(1, counts.Sum(n => (n - mean) * (n - mean)) / freedom / mean * raised * raised);
    }

    private static double Tail => (1 - RecordConstants.All["confidence"]) / 2;

    private static double Low(double total) => total > 0 ? Gamma.InvCDF(total, 1, Tail) : 0;

    private static double High(double total) => Gamma.InvCDF(total + 1, 1, 1 - Tail);
}
