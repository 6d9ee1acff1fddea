using System.Collections.Immutable;

namespace PlotAgronomy.Records;

/// <summary>Means of groups drawn toward the mean of all, the more the fewer observations they rest on.</summary>
/// <remarks>Between groups by the moments of DerSimonian and Laird; within groups pooled, with the usual spread counted as two
/// further observations, so that two like counts are not taken for certainty.</remarks>
internal sealed class Shrinkage
{
    private readonly int groups;
    private readonly double within;
    private readonly double varianceOfMean;

    internal Shrinkage(ImmutableArray<ImmutableArray<double>> groups)
    {
        this.groups = groups.Length;
        within = Within(groups);
        double[] own = [.. groups.Select(g => g.Average())];
        double[] variances = [.. groups.Select(g => within / g.Length)];
        Between = BetweenVariance(own, variances);
        double[] weights = [.. variances.Select(v => 1 / (v + Between))];
        MeanOfAll = Weighted(own, weights);
        varianceOfMean = 1 / weights.Sum();
    }

    /// <summary>Variance of the true means.</summary>
    internal double Between { get; }

    internal double MeanOfAll { get; }

    internal double WithinVariance => within;

    internal double Weight(int count) => RecordMath.ShrinkWeight(Between, within, count);

    internal double Shrunk(double ownMean, int count) => RecordMath.Shrunk(MeanOfAll, Weight(count), ownMean);

    internal double StandardError(int count)
    {
        double weight = Weight(count);
        return Math.Sqrt((weight * within / count) + ((1 - weight) * (1 - weight) * varianceOfMean));
    }

    /// <summary>Further observations until the interval of an own mean parts from the mean of all, which is taken as it stands;
    /// never fewer in all than say anything. Null where that is more than an owner will live to see, or there is one group
    /// alone.</summary>
    internal int? MoreToTell(double ownMean, int count)
    {
        double needed = Math.Max(
            RecordConstants.All["fewest-observations"],
            RecordMath.ObservationsToTell(RecordConstants.All["z-95"], ownMean, MeanOfAll, within)
        );
        return groups > 1 && needed - count <= RecordConstants.All["most-more-to-tell"]
            ? Math.Max(0, (int)Math.Ceiling(needed) - count)
            : null;
    }

    internal static double BetweenVariance(double[] means, double[] variances)
    {
        double[] weights = [.. variances.Select(v => 1 / v)];
        double sum = weights.Sum();
        double mean = Weighted(means, weights);
        double q = means.Zip(weights).Sum(m => m.Second * (m.First - mean) * (m.First - mean));
        double scale = sum - (weights.Sum(w => w * w) / sum);
        return means.Length > 1 ? Math.Max(0, (q - (means.Length - 1)) / scale) : 0;
    }

    private static double Within(ImmutableArray<ImmutableArray<double>> groups)
    {
        double usual = RecordConstants.All["usual-spread"];
        double counted = RecordConstants.All["usual-spread-counts"];
        double squares = groups.Sum(g => g.Sum(v => (v - g.Average()) * (v - g.Average())));
        return ((counted * usual * usual) + squares) / (counted + groups.Sum(g => g.Length - 1));
    }

    private static double Weighted(double[] values, double[] weights) =>
        values.Zip(weights).Sum(v => v.First * v.Second) / weights.Sum();
}
