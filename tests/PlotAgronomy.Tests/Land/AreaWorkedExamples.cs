using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

public class AreaWorkedExamples
{
    private const string File = "Land/worked-areas.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(File);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_published_answer(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, Answer(row));
    }

    private static double Answer(CsvRow row)
    {
        string topic = row.Text("topic");
        if (topic.StartsWith("geodesic", StringComparison.Ordinal))
        {
            var outline = PlotOutline.FromFixes([.. row.Text("inputs").Split(';').Select(Fix)]);
            return topic == "geodesic-area" ? outline.Area.SquareMeters : outline.Perimeter.Meters;
        }

        double[] x = [.. (row.TextOrNull("inputs") ?? "").Split(';', StringSplitOptions.RemoveEmptyEntries).Select(Number)];
        return topic switch
        {
            "rectangle" => PlotArea.FromRectangle(Feet(x[0]), Feet(x[1])).Area.SquareFeet,
            "triangle" => PlotArea.FromTriangle(Feet(x[0]), Feet(x[1])).Area.SquareFeet,
            "heron" => PlotArea.FromThreeSides(Feet(x[0]), Feet(x[1]), Feet(x[2])).Area.SquareFeet,
            "trapezoid" => PlotArea.FromTrapezoid(Feet(x[0]), Feet(x[1]), Feet(x[2])).Area.SquareFeet,
            "circle" => PlotArea.FromCircle(Feet(x[0])).Area.SquareFeet,
            "ellipse" => PlotArea.FromEllipse(Feet(x[0]), Feet(x[1])).Area.SquareFeet,
            "offsets-straight" => PlotArea.FromOffsets(Feet(x[0]), [.. x.Skip(1).Select(Feet)]).Area.SquareFeet,
            "offsets-smooth" => PlotArea.FromOffsets(Feet(x[0]), [.. x.Skip(1).Select(Feet)], OffsetRule.SmoothEdges).Area.SquareFeet,
            "square-side" => PlotArea.Stated(Area.FromAcres(x[0])).SquareSide.Feet,
            "slope" => 100 * (PlotArea.Stated(Area.FromAcres(1)).OnSlope(Slope.FromPercent(x[0])).Area.Acres - 1),
            "pace" => PaceCalibration.FromWalks(Length.FromFeet(x[0]), [.. x.Skip(1).Select(StepCount.FromSingleSteps)]).Step.Feet,
            "paced" => PaceCalibration.FromWalks(Length.FromFeet(x[0] * 100), StepCount.FromSingleSteps(100)).Measure(StepCount.FromSingleSteps(x[1])).Feet,
            "pace-error" => 100 * PlotArea.FromRectangle(MeasuredLength.FromPaces(200, x[0] / 100, 0), MeasuredLength.FromPaces(100, x[0] / 100, 0)).RelativeError!.Value,
            "fix-error" => 100 * PlotArea.FromOutline(Square(x[0]), Length.FromMeters(x[1])).RelativeError!.Value,
            "octant-area" => EighthOfTheEarthSquareMeters(),
            "earth-area" => 8 * EighthOfTheEarthSquareMeters(),
            "octant-perimeter" => 2 * Integrate(LandMath.MeridianRadiusMeters) + Math.PI / 2 * LandMath.ParallelRadiusMeters(0),
            "inset-square" => PlotOutline.Rectangle(Feet(x[0]).ToLength(), Feet(x[0]).ToLength()).Inset(Length.FromFeet(x[1])).Inside.SquareFeet,
            "inset-rectangle" => PlotOutline.Rectangle(Feet(x[0]).ToLength(), Feet(x[1]).ToLength()).Inset(Length.FromFeet(x[2])).Inside.SquareFeet,
            "inset-triangle" => PlotArea.FromThreeSides(Feet(x[0]), Feet(x[1]), Feet(x[2])).Outline!.Inset(Length.FromFeet(x[3])).Inside.SquareFeet,
            _ => throw new InvalidOperationException(topic),
        };
    }

    private static GeoPoint Fix(string text)
    {
        string[] parts = text.Split(' ');
        return GeoPoint.FromDegrees(Number(parts[0]), Number(parts[1]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static MeasuredLength Feet(double feet) => Length.FromFeet(feet);

    private static PlotOutline Square(double acres) =>
        PlotOutline.Rectangle(PlotArea.Stated(Area.FromAcres(acres)).SquareSide, PlotArea.Stated(Area.FromAcres(acres)).SquareSide);

    private static double EighthOfTheEarthSquareMeters() =>
        Math.PI / 2 * Integrate(latitude => LandMath.MeridianRadiusMeters(latitude) * LandMath.ParallelRadiusMeters(latitude));

    /// <summary>Simpson over the quarter meridian, in radians.</summary>
    private static double Integrate(Func<double, double> f)
    {
        const int Strips = 2000;
        double sum = f(0) + f(90);
        for (int i = 1; i < Strips; i++)
        {
            sum += (i % 2 == 1 ? 4 : 2) * f(90.0 * i / Strips);
        }

        return sum * (Math.PI / 2 / Strips) / 3;
    }
}
