using PlotAgronomy.Land;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Land;

/// <summary>A field between a road and a wood, with a pond in it, and a strip along the creek that is sown by itself. The owner calls
/// the field an acre.</summary>
internal static class Acres
{
    private static readonly Speed Pace = Speed.FromMilesPerHour(2.5);
    private static readonly Length Swath = Length.FromFeet(15);

    internal static void Answer(TextWriter output)
    {
        // All taped on the ground, to a foot or two: sides that were taped lie on the slope already.
        var byRoad = PlotArea.FromTriangle(Taped(236, 1), Taped(128, 2));
        var byWood = PlotArea.FromRectangle(Taped(236, 1), Taped(74, 1));
        var pond = PlotArea.FromEllipse(Taped(34, 1), Taped(21, 1));
        var field = PlotArea.FromPieces([byRoad, byWood], pond).OnSlope(Slope.FromDegrees(6)).ComparedWith(Area.FromAcres(1));
        output.Tell(field);
        output.WriteLine($"That is a square of {Amounts.Print(field.SquareSide, "ft", 0)} a side.");
        Walk(output, field, poundsPerAcre: 80);

        // The strip was measured across every 30 feet along the creek.
        double[] across = [22, 41, 57, 63, 52, 38, 19];
        var creek = PlotArea.FromOffsets(Taped(30, 0.5), [.. across.Select(feet => Taped(feet, 1))], OffsetRule.SmoothEdges);
        output.Tell(creek);
        Walk(output, creek, poundsPerAcre: 12);

        var hourly = WalkingPace.AreaRate(Pace, Swath, efficiency: Fraction.FromPercent(60));
        output.WriteLine($"With turns and refills count on {Amounts.Print(hourly, decimals: 1)} an hour.");
    }

    private static void Walk(TextWriter output, PlotArea plot, double poundsPerAcre)
    {
        var walk = SowingWalk.For(ApplicationRate.FromPoundsPerAcre(poundsPerAcre), plot, Swath, Pace);
        output.WriteLine(
            $"Load {Amounts.Print(walk.Load, "lb", 1)}, walk {Amounts.Print(walk.Distance, "ft", 0)}, "
                + $"{Amounts.Print(walk.Time!.Value, "min", 0)} without turns.");
        output.Warn(walk.Findings.ExceptBy(plot.Findings.Select(f => f.Code), f => f.Code));
    }

    private static MeasuredLength Taped(double feet, double giveOrTake) =>
        MeasuredLength.WithError(Length.FromFeet(feet), Length.FromFeet(giveOrTake));
}
