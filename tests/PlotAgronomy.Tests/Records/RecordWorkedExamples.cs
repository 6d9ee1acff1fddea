using PlotAgronomy.Records;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>Published examples and values computed apart.</summary>
public class RecordWorkedExamples
{
    private const string File = "Records/worked-records.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(File);

    [Theory, MemberData(nameof(Ids))]
    public void Matches(string id)
    {
        var row = WorkedExamples.Find(File, id);
        double[] x = [.. row.Numbers("inputs")];
        WorkedExamples.AssertMatches(row, Computed(row.Text("topic"), x));
    }

    private static double Computed(string topic, double[] x) =>
        topic switch
        {
            "exact" => RankCorrelation.ExactUpperTail((int)x[1], (int)x[0], []),
            "score" => RankCorrelation.Score(x),
            "variance" => Variance(x),
            "z" => RankCorrelation.Z(RankCorrelation.Score(x), Variance(x)),
            "upper-tail" => RankCorrelation.UpperTail(RankCorrelation.Z(RankCorrelation.Score(x), Variance(x))),
            "exact-of" => RankCorrelation.ExactUpperTail(RankCorrelation.Score(x), x.Length, Ties(x)),
            "slope" => RankCorrelation.Median(RankCorrelation.Slopes([.. Enumerable.Range(1, x.Length).Select(i => (double)i)], x)),
            "least-chance" => 2 * RankCorrelation.ExactUpperTail((int)(x[0] * (x[0] - 1) / 2), (int)x[0], []),
            "real-change" => RecordMath.LeastRealChange(RecordConstants.All["z-95"], x[0]),
            "yield" => RecordMath.YieldPoundsPerAcre(x[0], x[1]),
            "dry-yield" => RecordMath.YieldPoundsPerAcre(
                Mass.FromPounds(x[0]).Grams * ClippingEntry.DryPart(Mass.FromOunces(x[1]), Mass.FromOunces(x[2]), Mass.FromOunces(x[3])).Value, 9),
            "wet-yield" => RecordMath.YieldPoundsPerAcre(Mass.FromPounds(x[0]).Grams, x[1]),
            "use" => RecordMath.UsePercent(x[0], x[1]),
            "classes" => BrowseMath.Use(x),
            "poisson-low" => CountInterval.OfMean([(int)x[0]]).Low,
            "poisson-high" => CountInterval.OfMean([(int)x[0]]).High,
            _ => throw new ArgumentException(topic),
        };

    private static int[] Ties(double[] x) => [.. x.CountBy(v => v).Select(c => c.Value)];

    private static double Variance(double[] x) => RankCorrelation.Variance(x.Length, Ties(x).Sum(t => RankCorrelation.WeightedCount(t)));
}
