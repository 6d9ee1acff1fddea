using MathNet.Numerics;

namespace PlotAgronomy.Records;

/// <summary>Mann-Kendall and Theil-Sen on doubles.</summary>
internal static class RankCorrelation
{
    /// <summary>The sum of the signs of later less earlier, over all pairs of different times.</summary>
    internal static int Score(ReadOnlySpan<double> values)
    {
        int score = 0;
        for (int late = 1; late < values.Length; late++)
        {
            for (int early = 0; early < late; early++)
            {
                score += Math.Sign(values[late] - values[early]);
            }
        }

        return score;
    }

    /// <summary>Variance of the score, less for every group of ties.</summary>
    /// <param name="count">Readings.</param>
    /// <param name="tied">Sum of <see cref="WeightedCount"/> over the groups of ties.</param>
    internal static double Variance(double count, double tied) => (WeightedCount(count) - tied) / 18;

    internal static double WeightedCount(double count) => count * (count - 1) * ((2 * count) + 5);

    /// <summary>The score in standard deviations, one step nearer to 0, for it moves in steps.</summary>
    internal static double Z(double score, double variance) =>
        score == 0 || variance <= 0 ? 0 : (score - Math.Sign(score)) / Math.Sqrt(variance);

    /// <summary>Chance of a normal value at least as great.</summary>
    internal static double UpperTail(double z) => 0.5 * SpecialFunctions.Erfc(z / Math.Sqrt(2));

    /// <summary>Chance, without a trend, of a score at least as great: every order of the values is as likely, ties and
    /// all.</summary>
    /// <remarks>The number of orders with a given number of falling pairs has the generating function of the multinomial in q;
    /// score = untied pairs - 2 x falling pairs.</remarks>
    internal static double ExactUpperTail(int score, int count, IReadOnlyList<int> ties)
    {
        double[] orders = [1];
        for (int k = 2; k <= count; k++)
        {
            orders = TimesRun(orders, k);
        }

        foreach (int tie in ties)
        {
            for (int k = 2; k <= tie; k++)
            {
                orders = DividedByRun(orders, k);
            }
        }

        int untied = orders.Length - 1;
        double asGreat = 0;
        for (int falling = 0; falling < orders.Length; falling++)
        {
            asGreat += untied - (2 * falling) >= score ? orders[falling] : 0;
        }

        return asGreat / orders.Sum();
    }

    /// <summary>The slopes of all pairs of different times, in order.</summary>
    internal static double[] Slopes(ReadOnlySpan<double> times, ReadOnlySpan<double> values)
    {
        var slopes = new List<double>(values.Length * (values.Length - 1) / 2);
        for (int late = 1; late < values.Length; late++)
        {
            for (int early = 0; early < late; early++)
            {
                slopes.Add(Slope(values[early], values[late], times[early], times[late]));
            }
        }

        slopes.Sort();
        return [.. slopes];
    }

    internal static double Slope(double early, double late, double earlyTime, double lateTime) =>
        (late - early) / (lateTime - earlyTime);

    /// <summary>Median of values in order.</summary>
    internal static double Median(ReadOnlySpan<double> ordered) =>
        ordered.Length % 2 == 1
            ? ordered[ordered.Length / 2]
            : (ordered[(ordered.Length / 2) - 1] + ordered[ordered.Length / 2]) / 2;

    /// <summary>Times 1 + q + ... to the power of one less than the length of the run.</summary>
    private static double[] TimesRun(double[] polynomial, int run)
    {
        double[] product = new double[polynomial.Length + run - 1];
        for (int i = 0; i < polynomial.Length; i++)
        {
            for (int j = 0; j < run; j++)
            {
                product[i + j] += polynomial[i];
            }
        }

        return product;
    }

    /// <summary>Undoes <see cref="TimesRun"/>; it leaves no rest here.</summary>
    private static double[] DividedByRun(double[] polynomial, int run)
    {
        double[] quotient = new double[polynomial.Length - run + 1];
        for (int i = 0; i < quotient.Length; i++)
        {
            double sum = polynomial[i];
            for (int j = 1; j < run && j <= i; j++)
            {
                sum -= quotient[i - j];
            }

            quotient[i] = sum;
        }

        return quotient;
    }
}
