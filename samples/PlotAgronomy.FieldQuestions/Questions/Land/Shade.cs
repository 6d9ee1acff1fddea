using PlotAgronomy.Land;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Land;

/// <summary>A clearing with tall oaks along its south side, walked with a phone from the south-west corner; nothing grows
/// within 25 feet of the trunks.</summary>
internal static class Shade
{
    internal static void Answer(TextWriter output)
    {
        var clearing = PlotOutline.FromFixes(
        [
            GeoPoint.FromDegrees(37.41200, -80.55100),
            GeoPoint.FromDegrees(37.41200, -80.55012),
            GeoPoint.FromDegrees(37.41246, -80.55027),
            GeoPoint.FromDegrees(37.41253, -80.55093),
        ]);
        var ground = PlotArea.FromOutline(clearing, fixError: Length.FromMeters(4)).OnSlope(Slope.FromPercent(9));
        output.WriteLine(ground);
        output.Warn(ground.Findings);
        output.WriteLine($"Such a slope is {Amounts.Print(Slope.FromPercent(9).Degrees, 0)} degrees on a phone.");

        // Side 1 runs from the first corner to the second: the oaks.
        var sunny = clearing.InsetAlong(Length.FromFeet(25), side: 1);
        output.Tell(sunny);
        var sown = sunny.Parts[0];
        foreach (var corner in sown.Corners.OrderBy(c => c.NorthFeet).Take(2))
        {
            output.WriteLine($"Set a flag at {sown.Locate(corner)}.");
        }

        // An old well lies 60 feet east and 90 feet north of the first corner.
        bool isWithin = sown.Contains(PlanePoint.FromFeet(60, 90));
        output.WriteLine(isWithin ? "The well lies within: fence it." : "The well lies outside.");

        var passes = FieldPasses.Lay(sown, new()
        {
            Rate = ApplicationRate.FromPoundsPerAcre(30),
            Swath = Length.FromFeet(18),
            Speed = Speed.FromMilesPerHour(3),
            TurnTime = TimeSpan.FromSeconds(8),
            HeadlandLap = true,
        });
        output.Tell(passes);
        output.WriteLine($"Sown twice where passes meet the lap: {Amounts.Print(passes.SownTwice, "ft2", 0)}.");
        output.WriteLine($"Left for the hand in the corners: {Amounts.Print(passes.Missed, "ft2", 0)}.");
        if (passes.RunnerUp is { } other)
        {
            string minutes = Amounts.Print(other.TotalTime, "min", 0);
            output.WriteLine($"Walked towards {other.Direction} it takes {Amounts.Print(other.Seed, "lb", 1)} and {minutes}.");
        }
    }
}
