using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Records;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Records;

/// <summary>The test of trend against a second implementation that lists every order.</summary>
public class RankCorrelationProperties
{
    [Property(MaxTest = 40)]
    public bool The_exact_chance_is_that_of_listing_every_order_ties_and_all(NonEmptyArray<byte> draws)
    {
        double[] values = [.. draws.Get.Take(7).Select(b => (double)(b % 5))];
        int[] ties = [.. values.CountBy(v => v).Select(c => c.Value)];
        int score = Score(values);
        long orders = 0;
        long asGreat = 0;
        foreach (double[] order in Orders(values))
        {
            orders++;
            asGreat += Score(order) >= score ? 1 : 0;
        }

        return Near.Equal((double)asGreat / orders, RankCorrelation.ExactUpperTail(score, values.Length, ties), 1e-12) && score == RankCorrelation.Score(values);
    }

    [Property]
    public bool The_median_slope_does_not_mind_the_order_of_reading_and_follows_the_units(NonEmptyArray<byte> draws, byte scale)
    {
        double[] values = [.. draws.Get.Take(12).Select(b => (double)b)];
        double[] times = [.. values.Select((_, i) => i * 1.25)];
        if (values.Length < 2)
        {
            return true;
        }

        double factor = 1 + scale;
        double slope = RankCorrelation.Median(RankCorrelation.Slopes(times, values));
        double scaled = RankCorrelation.Median(RankCorrelation.Slopes(times, [.. values.Select(v => v * factor)]));
        double turned = RankCorrelation.Median(RankCorrelation.Slopes([.. times.Select(t => -t).Reverse()], [.. values.AsEnumerable().Reverse()]));
        return Near.Equal(slope * factor, scaled, 1e-9) && Math.Abs(slope + turned) < 1e-9 && RankCorrelation.Score([.. values.AsEnumerable().Reverse()]) == -RankCorrelation.Score(values);
    }

    private static int Score(double[] values) =>
        values.SelectMany((early, i) => values.Skip(i + 1).Select(late => late > early ? 1 : late < early ? -1 : 0)).Sum();

    private static IEnumerable<double[]> Orders(double[] values)
    {
        if (values.Length <= 1)
        {
            yield return values;
            yield break;
        }

        for (int first = 0; first < values.Length; first++)
        {
            foreach (double[] rest in Orders([.. values[..first], .. values[(first + 1)..]]))
            {
                yield return [values[first], .. rest];
            }
        }
    }
}
