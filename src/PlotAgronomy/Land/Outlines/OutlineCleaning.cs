using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>Makes a clean ring of what a person drew or walked, or says why it cannot.</summary>
internal static class OutlineCleaning
{
    private static readonly int MostPoints = (int)LandConstants.All["most-corners"];

    /// <summary>Corners that enclose no more than this beside the square of the way around lie on one line.</summary>
    private const double FlatPart = 1e-12;

    private const string OnOneLine = "The corners lie on one line: they enclose no area.";

    /// <summary>Corners of a drawing: crossing sides are a problem.</summary>
    internal static bool TryCorners(IReadOnlyList<PlanePoint> places, out ImmutableArray<PlanePoint> corners, out string problem)
    {
        corners = [];
        return TryWithoutRepeats(places, out var ring, out problem)
            && (FirstCrossing(ring) is not { } crossed || Fails(crossed, out problem))
            && TryCounterClockwise(ring, out corners, out problem);
    }

    /// <summary>A walked track: small loops, from standing still or from walking past the start, are cut away.</summary>
    internal static bool TryTrack(
        IReadOnlyList<PlanePoint> places,
        out ImmutableArray<PlanePoint> corners,
        out ImmutableArray<Finding> findings,
        out string problem
    )
    {
        corners = [];
        findings = [];
        if (!TryWithoutRepeats(places, out var ring, out problem))
        {
            return false;
        }

        double gapFeet = LandMath.DistanceFeet(ring[^1], ring[0]);
        int loops = 0;
        double cutSquareFeet = 0;
        var sides = new TrackRing(ring);
        int from = sides.First;
        while (sides.NextCrossing(from) is { } crossing)
        {
            var (inner, outer) = sides.Grounds(crossing);
            bool isLoopInside = Math.Abs(inner) < Math.Abs(outer);
            double loopSquareFeet = Math.Min(Math.Abs(inner), Math.Abs(outer)),
                restSquareFeet = Math.Max(Math.Abs(inner), Math.Abs(outer));
            if (loopSquareFeet > LandConstants.All["cut-loop-part"] * restSquareFeet)
            {
                return Fails(CrossesItself(sides, crossing), out problem);
            }

            loops++;
            cutSquareFeet += loopSquareFeet;
            if (isLoopInside)
            {
                // Sides before the crossing met none: the search goes on there.
                from = sides.CutInner(crossing);
            }
            else
            {
                sides.CutOuter(crossing);
                from = sides.First;
            }

            if (sides.Count < 3)
            {
                return Fails(OnOneLine, out problem);
            }
        }

        ring = sides.ToList();
        double aroundFeet = LandMath.PerimeterFeet(ring.ToArray());
        if (loops > 0)
        {
            findings =
            [
                FindingCatalog.Create(
                    LandCodes.LoopsCut,
                    ("count", loops.ToString(CultureInfo.InvariantCulture)),
                    ("area", Amounts.Print(UnitsNet.Area.FromSquareFeet(cutSquareFeet), "ft2", 0))
                ),
            ];
        }
        else if (ring.Count >= LandConstants.All["track-points"] && gapFeet > LandConstants.All["open-gap-part"] * aroundFeet)
        {
            findings =
            [
                FindingCatalog.Create(
                    LandCodes.OutlineOpen,
                    ("gap", Amounts.Print(Length.FromFeet(gapFeet), decimals: 0)),
                    ("percent", $"{Amounts.Print(100 * gapFeet / aroundFeet, 0)} %")
                ),
            ];
        }

        return TryCounterClockwise(ring, out corners, out problem);
    }

    private static bool Fails(string what, out string problem)
    {
        problem = what;
        return false;
    }

    private static double Area(List<PlanePoint> ring) => LandMath.SignedSquareFeet(ring.ToArray());

    private static bool TryWithoutRepeats(IReadOnlyList<PlanePoint> places, out List<PlanePoint> ring, out string problem)
    {
        ring = new List<PlanePoint>(places.Count);
        if (places.Count > MostPoints)
        {
            return Fails(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"An outline may have at most {MostPoints} corners; this one has {places.Count}."
                ),
                out problem
            );
        }

        foreach (var place in places)
        {
            if (ring.Count == 0 || ring[^1] != place)
            {
                ring.Add(place);
            }
        }

        while (ring.Count > 1 && ring[^1] == ring[0])
        {
            ring.RemoveAt(ring.Count - 1);
        }

        problem = "";
        return ring.Count >= 3
            || Fails(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"An outline needs at least 3 different corners; this one has {ring.Count}."
                ),
                out problem
            );
    }

    private static bool TryCounterClockwise(List<PlanePoint> ring, out ImmutableArray<PlanePoint> corners, out string problem)
    {
        corners = [];
        problem = "";
        double signed = Area(ring);
        double around = LandMath.PerimeterFeet(ring.ToArray());
        if (Math.Abs(signed) <= FlatPart * around * around)
        {
            return Fails(OnOneLine, out problem);
        }

        if (signed < 0)
        {
            // The first corner stays first.
            ring.Reverse(1, ring.Count - 1);
        }

        corners = [.. ring];
        return true;
    }

    private static string CrossesItself(TrackRing ring, (int First, int Second, PlanePoint Place) crossing) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"The outline crosses itself at {crossing.Place}: the side from corner {ring.NumberOf(crossing.First)} meets the "
                + $"side from corner {ring.NumberOf(crossing.Second)} of {ring.Count}. Its two halves would cancel; list the "
                + $"corners in the order you pass them, or split the plot."
        );

    /// <summary>Where and how an outline crosses itself; null when it does not.</summary>
    private static string? FirstCrossing(List<PlanePoint> ring)
    {
        var sides = new TrackRing(ring);
        return sides.NextCrossing(sides.First) is { } crossing ? CrossesItself(sides, crossing) : null;
    }
}
