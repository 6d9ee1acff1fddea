using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class GateWorkedExamples
{
    private const string Curves = "Spreading/worked-curves.csv";
    private const string Holes = "Spreading/worked-orifice.csv";

    public static TheoryData<string> CurveIds => WorkedExamples.Ids(Curves);

    public static TheoryData<string> HoleIds => WorkedExamples.Ids(Holes);

    [Theory, MemberData(nameof(CurveIds))]
    public void The_curve_matches_the_published_example_and_the_second_implementation(string id)
    {
        var row = WorkedExamples.Find(Curves, id);
        var knots = WorkedExamples.Table("Spreading/curve-knots.csv").Rows.Where(r => r.Text("case") == row.Text("case")).ToList();
        double[] x = [.. knots.Select(k => k.Number("x"))];
        double[] y = [.. knots.Select(k => k.Number("y"))];
        var fit = PowerLaw.Fit([.. x.Zip(y).Where(p => p.First > 0 && p.Second > 0)]);
        WorkedExamples.AssertMatches(row, row.Text("topic") switch
        {
            "pchip" => new MonotoneCurve(x, y).At(row.Number("x")),
            "inverse" => new MonotoneCurve(x, y).ArgumentOf(row.Number("x")),
            "exponent" => fit!.Value.Exponent,
            _ => fit!.Value.Factor,
        });
    }

    [Theory, MemberData(nameof(HoleIds))]
    public void Flow_through_a_round_hole_matches_the_law_evaluated_apart(string id)
    {
        var row = WorkedExamples.Find(Holes, id);
        var grain = GrainFlow.For(Length.FromMillimeters(row.Number("diameter_mm")), BushelWeight(row.Number("lb_per_bu")));
        WorkedExamples.AssertMatches(row, grain.Through(Length.FromMillimeters(row.Number("hole_mm"))).PoundsPerMinute);
    }

    internal static Density BushelWeight(double poundsPerBushel)
    {
        Assert.True(Amounts.TryReadDensity(FormattableString.Invariant($"{poundsPerBushel} lb/bu"), out var density, out _));
        return density;
    }
}
