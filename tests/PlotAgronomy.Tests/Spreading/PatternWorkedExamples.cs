using PlotAgronomy.Spreading;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Spreading;

public class PatternWorkedExamples
{
    private const string Overlaps = "Spreading/worked-overlap.csv";
    private const string Shapes = "Spreading/worked-shapes.csv";

    public static TheoryData<string> OverlapIds => WorkedExamples.Ids(Overlaps);

    public static TheoryData<string> ShapeIds => WorkedExamples.Ids(Shapes);

    internal static SpreadPattern SinglePass(string name)
    {
        var rows = WorkedExamples.Table("Spreading/single-pass-patterns.csv").Rows.Where(r => r.Text("pattern") == name).ToList();
        return SpreadPattern.FromTrays([.. rows.Select(r => r.Number("value"))], Length.FromFeet(rows[0].Number("spacing_ft")), Length.FromFeet(rows[0].Number("position_ft")));
    }

    internal static SpreadPattern Shape(string name, double a, double b) => name switch
    {
        "triangle" => SpreadPattern.Triangle(Length.FromFeet(a), Length.FromFeet(b)),
        "trapezoid" => SpreadPattern.Trapezoid(Length.FromFeet(a), Length.FromFeet(b)),
        "bell" => SpreadPattern.Bell(Length.FromFeet(a)),
        "parabola" => SpreadPattern.Parabola(Length.FromFeet(a)),
        "semi-ellipse" => SpreadPattern.SemiEllipse(Length.FromFeet(a)),
        "raised cosine" => SpreadPattern.RaisedCosine(Length.FromFeet(a)),
        "cosine lobe" => SpreadPattern.CosineLobe(Length.FromFeet(a)),
        _ => throw new InvalidOperationException(name),
    };

    [Theory, MemberData(nameof(OverlapIds))]
    public void Overlapped_trays_match_the_second_implementation(string id)
    {
        var row = WorkedExamples.Find(Overlaps, id);
        var overlapped = OverlappedPattern.For(SinglePass(row.Text("pattern")), Length.FromFeet(row.Number("swath_ft")), row.Choice<DrivingMethod>("driving"));
        WorkedExamples.AssertMatches(row, overlapped.PopulationCvPercent);
        WorkedExamples.Note(row, overlapped.SampleCvPercent, overlapped.Mean, overlapped.LowestToMean, overlapped.HighestToMean);
        Assert.Equal(row.Number("sample_cv"), overlapped.SampleCvPercent, 0.0006);
        Assert.Equal(row.Number("mean"), overlapped.Mean, 0.00001);
        Assert.Equal(row.Number("lowest"), overlapped.LowestToMean * overlapped.Mean, 0.00001);
        Assert.Equal(row.Number("highest"), overlapped.HighestToMean * overlapped.Mean, 0.00001);
    }

    [Theory, MemberData(nameof(ShapeIds))]
    public void Overlapped_shapes_match_closed_form_series_or_integral(string id)
    {
        var row = WorkedExamples.Find(Shapes, id);
        var overlapped = OverlappedPattern.For(Shape(row.Text("shape"), row.Number("a"), row.Number("b")), Length.FromFeet(row.Number("swath")), row.Choice<DrivingMethod>("driving"));
        WorkedExamples.AssertMatches(row, overlapped.PopulationCvPercent);
    }
}
