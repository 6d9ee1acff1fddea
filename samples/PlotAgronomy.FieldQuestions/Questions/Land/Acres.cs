using PlotAgronomy.Land;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.FieldQuestions.Land;

/// <summary>A field with a round pond, a corner by the gate, an island between two lanes and a strip along the creek: all
/// taped on the ground, to a foot or two. The owner calls them two acres.</summary>
internal static class Acres
{
    private static readonly string[] Names = ["The field", "The corner", "The island", "The creek"];
    private static readonly Speed Pace = Speed.FromMilesPerHour(2.5);
    private static readonly Length Swath = Length.FromFeet(15);

    internal static void Answer(TextWriter output)
    {
        var field = PlotArea.FromPieces(
            [
                PlotArea.FromRectangle(Taped(236, 1), Taped(114, 1)),
                PlotArea.FromThreeSides(Taped(236, 1), Taped(151, 2), Taped(148, 2)),
            ],
            PlotArea.FromCircle(Taped(31, 1)));
        var corner = PlotArea.FromTriangle(Taped(118, 1), Taped(64, 1));
        var island = PlotArea.FromEllipse(Taped(72, 1), Taped(31, 1));

        // The strip was measured across every 30 feet along the creek.
        double[] across = [22, 41, 57, 63, 52, 38, 19];
        var creek = PlotArea.FromOffsets(Taped(30, 0.5), [.. across.Select(feet => Taped(feet, 1))], OffsetRule.SmoothEdges);
        PlotArea[] patches = [field, corner, island, creek];
        foreach (var (name, plot) in Names.Zip(patches))
        {
            output.WriteLine($"{name}, as large as a square of {Amounts.Print(plot.SquareSide, "ft", 0)}: {plot}");
        }

        // Sides that were taped lie on the slope already.
        output.Warn(field.OnSlope(Slope.FromDegrees(6)).Findings);
        var all = Area.FromAcres(field.Area.Acres + corner.Area.Acres + island.Area.Acres + creek.Area.Acres);
        output.Warn(PlotArea.Stated(all).ComparedWith(Area.FromAcres(2)).Findings);

        // Eighty pounds of rye an acre, fifteen feet wide.
        var walks = patches.Select(p => SowingWalk.For(ApplicationRate.FromPoundsPerAcre(80), p, Swath, Pace)).ToList();
        foreach (var walk in walks)
        {
            var (load, way) = (Amounts.Print(walk.Load, "lb", 1), Amounts.Print(walk.Distance, "ft", 0));
            output.WriteLine($"Load {load}, walk {way}, {Amounts.Print(walk.Time!.Value, "min", 0)} without turns.");
        }

        output.Warn(walks.SelectMany(w => w.Findings).DistinctBy(f => f.Code));
        var hourly = WalkingPace.AreaRate(Pace, Swath, efficiency: Fraction.FromPercent(60));
        output.WriteLine($"With turns and refills count on {Amounts.Print(hourly, decimals: 1)} an hour.");
    }

    private static MeasuredLength Taped(double feet, double giveOrTake) =>
        MeasuredLength.WithError(Length.FromFeet(feet), Length.FromFeet(giveOrTake));
}
