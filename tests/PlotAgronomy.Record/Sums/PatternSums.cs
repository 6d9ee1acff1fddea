using PlotAgronomy.Spreading;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Spreading patterns, their overlap, the swath they advise and their first pass.</summary>
internal static class PatternSums
{
    private static readonly double[] Trays = [0.2, 1.1, 2.4, 4.2, 5.1, 5.6, 5.0, 3.9, 2.8, 1.7, 0.6];

    private static readonly (string Words, SpreadPattern Pattern)[] Patterns =
    [
        ("a triangle", SpreadPattern.Triangle(Feet(15), Feet(15))),
        ("a leaning triangle", SpreadPattern.Triangle(Feet(10), Feet(18))),
        ("a trapezoid", SpreadPattern.Trapezoid(Feet(10), Feet(26))),
        ("a bell", SpreadPattern.Bell(Feet(5))),
        ("a parabola", SpreadPattern.Parabola(Feet(14))),
        ("half an ellipse", SpreadPattern.SemiEllipse(Feet(14))),
        ("a raised cosine", SpreadPattern.RaisedCosine(Feet(14))),
        ("a cosine lobe", SpreadPattern.CosineLobe(Feet(14))),
        ("trays", SpreadPattern.FromTrays(Trays, Feet(2.5))),
        ("trays from the left", SpreadPattern.FromTrays(Trays, Feet(2.5), Feet(-14))),
    ];

    internal static void Record(Recorder recorder)
    {
        foreach (var (words, pattern) in Patterns)
        {
            recorder.Call($"pattern of {words}", () => pattern);
            recorder.Call($"pattern of {words}, mirrored", () => pattern.Mirrored());
            foreach (var driving in Enum.GetValues<DrivingMethod>())
            {
                Overlap(recorder, $"pattern of {words}, {Words(driving)}", pattern, driving);
            }

            foreach (var placement in Enum.GetValues<FirstPassPlacement>())
            {
                foreach (double swath in new[] { 8.0, 12, 18 })
                {
                    recorder.Call($"pattern of {words}: first pass {Words(placement)}, swath {swath} ft",
                        () => FirstPassEffect.For(pattern, Feet(swath), placement));
                }
            }
        }

        recorder.Call("pattern of one tray", () => SpreadPattern.FromTrays([1], Feet(2)));
        recorder.Call("pattern of empty trays", () => SpreadPattern.FromTrays([0, 0, 0], Feet(2)));
        recorder.Add("pattern drawn", "picture.digest",
            Digest(OverlappedPattern.For(Patterns[8].Pattern, Feet(14), DrivingMethod.BackAndForth).ToSvg()));
        recorder.Add("pattern drawn with a limit", "picture.digest",
            Digest(OverlappedPattern.For(Patterns[0].Pattern, Feet(14), DrivingMethod.OneDirection).ToSvg(10)));
    }

    private static void Overlap(Recorder recorder, string name, SpreadPattern pattern, DrivingMethod driving)
    {
        foreach (double swath in new[] { 6.0, 10, 14, 18, 24 })
        {
            recorder.Call($"{name}, swath {swath} ft", () => Short(OverlappedPattern.For(pattern, Feet(swath), driving)));
            recorder.Call($"{name}, swath {swath} ft against half the rate twice",
                () => Short(HalfRateComparison.For(pattern, Feet(swath), driving)));
        }

        foreach (var convention in Enum.GetValues<CvConvention>())
        {
            recorder.Call($"{name}: swath advised, {Words(convention)}",
                () => SwathAdvice.For(pattern, driving, convention: convention));
            recorder.Call($"{name}: swath advised within 20 percent, {Words(convention)}",
                () => SwathAdvice.For(pattern, driving, 20, convention));
        }
    }

    private static Dictionary<string, object?> Short(OverlappedPattern overlapped) => Named(
        ("mean", overlapped.Mean),
        ("population cv", overlapped.PopulationCvPercent),
        ("sample cv", overlapped.SampleCvPercent),
        ("lowest", overlapped.LowestToMean),
        ("highest", overlapped.HighestToMean),
        ("positions", overlapped.Amounts.Length),
        ("first", overlapped.FirstPosition),
        ("step", overlapped.Step),
        ("verdict", overlapped.Verdict),
        ("Findings", overlapped.Findings));

    private static Dictionary<string, object?> Short(HalfRateComparison both) =>
        Named(
        ("full", Short(both.FullRate)),
        ("half", Short(both.HalfSwath)),
        ("right angles cv", both.RightAnglesPopulationCvPercent),
        ("right angles lowest", both.RightAnglesLowestToMean),
        ("half is more even", both.HalfSwathIsMoreEven),
        ("Findings", both.Findings));
}
