using PlotAgronomy.Land;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

/// <summary>The sums people look for, as the page shows them.</summary>
public class LandSumsDocExample
{
    [Fact]
    public void The_sums_of_the_page_are_what_the_code_writes() =>
        DocExample.AssertCurrent("docs/land.md", "tests/PlotAgronomy.Tests/Land/LandSumsDocExample.cs", Run, block: 1);

    internal static void Run(TextWriter output)
    {
        // begin example
        // A corner cut off by a road, a pond edge, and a strip along a creek measured every 25 ft.
        var corner = PlotArea.FromTriangle(Length.FromFeet(180), Length.FromFeet(95));
        var pond = PlotArea.FromEllipse(Length.FromFeet(90), Length.FromFeet(55));
        Length[] widths = [Length.FromFeet(40), Length.FromFeet(52), Length.FromFeet(61), Length.FromFeet(48)];
        var creek = PlotArea.FromOffsets(Length.FromFeet(25), [.. widths.Select(MeasuredLength.FromLength)]);
        foreach (var plot in new[] { corner, pond, creek })
        {
            output.WriteLine($"{Amounts.Print(plot.Area, "ac", 3)}, as large as a square of {Amounts.Print(plot.SquareSide, "ft", 0)}");
        }

        // A taped length that may be off by 2 ft, and what a guess is worth.
        var taped = PlotArea.FromRectangle(
            MeasuredLength.WithError(Length.FromFeet(210), Length.FromFeet(2)), Length.FromFeet(104));
        output.WriteLine($"between {Amounts.Print(taped.Low!.Value, "ac", 3)} and {Amounts.Print(taped.High!.Value, "ac", 3)}");
        output.WriteLine(taped.ComparedWith(Area.FromAcres(0.75)).Findings[0]);

        // A slope read from a phone, in degrees.
        var slope = Slope.FromDegrees(8);
        output.WriteLine($"{Amounts.Print(slope.Degrees, 1)} degrees are {slope}");

        // Is the feeder inside, and where does the first corner lie on the earth?
        var walked = PlotOutline.FromFixes([GeoPoint.FromDegrees(31, -84), GeoPoint.FromDegrees(31, -83.9988), GeoPoint.FromDegrees(31.0011, -83.9994)]);
        output.WriteLine(walked.Contains(PlanePoint.FromFeet(0, 0)) ? "the first fix lies inside" : "the first fix lies outside");
        output.WriteLine(walked.Locate(walked.Corners[0]));
        // end example
    }
}
