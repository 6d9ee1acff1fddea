using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What is worth saying of passes laid over a plot.</summary>
internal static class PassFindings
{
    internal static IEnumerable<Finding> Of(PlotOutline outline, FieldPassesRequest request, LaidPasses laid) =>
        outline
            .Findings.Concat(SpreadingPlausibility.Of(request.Speed, Length.FromFeet(request.SwathFeet), rate: request.Rate))
            .Concat(OfLap(request, laid))
            .Concat(OfGround(outline.Area.SquareFeet, request, laid.Ground))
            .Concat(OfPasses(request, laid))
            .Concat(OfDirection(request, laid));

    private static IEnumerable<Finding> OfLap(FieldPassesRequest request, LaidPasses laid)
    {
        double swathFeet = request.SwathFeet,
            spacingFeet = laid.SpacingFeet;
        var lap = laid.Lap;
        if (request.HeadlandLap && lap.IsEmpty)
        {
            yield return FindingCatalog.Create(SpreadingCodes.LapNoRoom, ("swath", Amounts.Print(swathFeet, 2)));
        }

        if (!lap.IsEmpty && Tolerance.IsAbove(swathFeet, spacingFeet))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.LapKeepsSwath,
                ("spacing", Amounts.Print(spacingFeet, 2)),
                ("swath", Amounts.Print(swathFeet, 2))
            );
        }
    }

    private static IEnumerable<Finding> OfGround(double plotSquareFeet, FieldPassesRequest request, SeededGround ground)
    {
        if (Exceeds(ground.Missed, "missed-share", out string missed, out _))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.LapMisses,
                ("percent", missed),
                ("ground", Amounts.Print(Area.FromSquareFeet(ground.Missed), "ft2", 0)),
                ("swath", Amounts.Print(request.SwathFeet, 1))
            );
        }

        if (Exceeds(ground.SownTwice, "twice-share", out string twice, out string twiceLimit))
        {
            yield return FindingCatalog.Create(SpreadingCodes.SownTwice, ("percent", twice), ("limit", twiceLimit));
        }

        if (Exceeds(ground.Outside, "outside-share", out string outside, out string outsideLimit))
        {
            yield return FindingCatalog.Create(SpreadingCodes.Outside, ("percent", outside), ("limit", outsideLimit));
        }

        bool Exceeds(double squareFeet, string limit, out string percent, out string most)
        {
            double share = 100 * squareFeet / plotSquareFeet,
                atMost = SpreadingConstants.All[limit];
            percent = Amounts.Print(share, 1);
            most = Amounts.Print(atMost, 0);
            return Tolerance.IsAbove(share, atMost);
        }
    }

    /// <summary>Told where the direction chosen takes a turn more to save seed.</summary>
    private static IEnumerable<Finding> OfDirection(FieldPassesRequest request, LaidPasses laid)
    {
        if (laid.Layout is { Direction: var chosen, Other: { } other } && other.Passes < chosen.Passes)
        {
            double pounds = (other.ThrownSquareFeet - chosen.ThrownSquareFeet) * request.PoundsPerSquareFoot;
            yield return FindingCatalog.Create(
                SpreadingCodes.OtherDirection,
                ("bearing", other.Bearing.ToString()),
                ("fewer", Amounts.Print(other.Passes, 0)),
                ("passes", Amounts.Print(chosen.Passes, 0)),
                ("seed", Amounts.Print(pounds, 2))
            );
        }
    }

    private static IEnumerable<Finding> OfPasses(FieldPassesRequest request, LaidPasses laid)
    {
        double swathFeet = request.SwathFeet,
            spacingFeet = laid.SpacingFeet;
        if (Tolerance.IsAbove(swathFeet, spacingFeet))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.SpacingEvened,
                ("spacing", Amounts.Print(spacingFeet, 2)),
                ("swath", Amounts.Print(swathFeet, 2)),
                ("change", Amounts.Print((swathFeet / spacingFeet - 1) * 100, 1))
            );
        }

        double pathMiles = laid.PathFeet / ExactUnits.FeetPerMile,
            walk = SpreadingConstants.All["walk-on-foot"];
        if (Tolerance.IsAbove(pathMiles, walk))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.LongWalk,
                ("miles", Amounts.Print(pathMiles, 1)),
                ("limit", Amounts.Print(walk, 0)),
                ("swath", Amounts.Print(swathFeet, 1))
            );
        }

        if (request.FirstPass == FirstPassPlacement.OnEdge && laid.Lap.IsEmpty)
        {
            yield return FindingCatalog.Create(SpreadingCodes.FirstPassOnEdge);
        }
    }
}
