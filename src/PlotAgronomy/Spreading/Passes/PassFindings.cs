using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>What is worth saying of passes laid over a plot.</summary>
internal static class PassFindings
{
    internal static IEnumerable<Finding> Of(
        PlotOutline outline,
        FieldPassesRequest request,
        LaidPasses laid,
        double outsideShare
    ) =>
        outline
            .Findings.Concat(SpreadingPlausibility.Of(request.Speed, Length.FromFeet(request.SwathFeet), rate: request.Rate))
            .Concat(OfLap(outline, request, laid)).Concat(OfPasses(request, laid, outsideShare));

    private static IEnumerable<Finding> OfLap(PlotOutline outline, FieldPassesRequest request, LaidPasses laid)
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

        double missedFeet = lap.IsEmpty ? 0 : EdgeBeyond(outline, lap, swathFeet);
        if (missedFeet > swathFeet * SpreadingConstants.All["missed-edge"])
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.LapMisses,
                ("edge", Amounts.Print(missedFeet, 0)),
                ("swath", Amounts.Print(swathFeet, 1))
            );
        }
    }

    /// <summary>Feet of the plot's edge farther than a swath from every lap: necks and spikes too narrow for one.</summary>
    private static double EdgeBeyond(PlotOutline outline, ImmutableArray<PlotOutline> laps, double swathFeet)
    {
        double beyond = 0;
        foreach (var (from, to) in Sides(outline))
        {
            double feet = LandMath.DistanceFeet(from, to);
            int pieces = (int)Math.Ceiling(4 * feet / swathFeet);
            for (int i = 0; i < pieces; i++)
            {
                double part = (i + 0.5) / pieces;
                var place = new PlanePoint(
                    from.EastFeet + part * (to.EastFeet - from.EastFeet),
                    from.NorthFeet + part * (to.NorthFeet - from.NorthFeet)
                );
                if (!laps.Any(lap => Sides(lap).Any(s => LandMath.DistanceFeet(place, s.From, s.To) <= swathFeet)))
                {
                    beyond += feet / pieces;
                }
            }
        }

        return beyond;
    }

    private static IEnumerable<(PlanePoint From, PlanePoint To)> Sides(PlotOutline ring) =>
        ring.Corners.Select((corner, i) => (corner, ring.Corners[(i + 1) % ring.Corners.Length]));

    private static IEnumerable<Finding> OfPasses(FieldPassesRequest request, LaidPasses laid, double outsideShare)
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

        double limit = SpreadingConstants.All["outside-share"];
        if (Tolerance.IsAbove(100 * outsideShare, limit))
        {
            yield return FindingCatalog.Create(
                SpreadingCodes.Outside,
                ("percent", Amounts.Print(100 * outsideShare, 1)),
                ("limit", Amounts.Print(limit, 0))
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
