using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>Makes a clean ring of what a person drew or walked, or says why it cannot.</summary>
internal static class OutlineCleaning
{
    /// <summary>The search for crossings takes time with the square of the corners.</summary>
    private const int MostPoints = 10_000;

    /// <summary>Corners that enclose no more than this beside the square of the way around lie on one line.</summary>
    private const double FlatPart = 1e-12;

    private const string OnOneLine = "The corners lie on one line: they enclose no area.";

    /// <summary>Corners of a drawing: crossing sides are a problem.</summary>
    internal static bool TryCorners(IReadOnlyList<PlanePoint> places, out ImmutableArray<PlanePoint> corners, out string problem)
    {
        corners = [];
        return TryWithoutRepeats(places, out var ring, out problem)
            && (FirstCrossing(ring) is not { } crossing || Fails(CrossesItself(ring, crossing), out problem))
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
        int from = 0;
        while (NextCrossing(ring, from) is { } crossing)
        {
            var (loop, rest) = Parted(ring, crossing);
            double loopSquareFeet = Math.Abs(Area(loop)),
                restSquareFeet = Math.Abs(Area(rest));
            if (loopSquareFeet > LandConstants.All["cut-loop-part"] * restSquareFeet)
            {
                return Fails(CrossesItself(ring, crossing), out problem);
            }

            loops++;
            cutSquareFeet += loopSquareFeet;
            bool startStays = rest[0] == ring[0];
            if (!TryWithoutRepeats(rest, out ring, out _))
            {
                return Fails(OnOneLine, out problem);
            }

            // Sides before the crossing met none: the search goes on there, or a track of many loops would take the cube of
            // its fixes.
            from = startStays ? Math.Max(0, crossing.First - 1) : 0;
        }

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

    /// <summary>The two rings that a crossing makes of one, the smaller first.</summary>
    private static (List<PlanePoint> Loop, List<PlanePoint> Remainder) Parted(
        List<PlanePoint> ring,
        (int First, int Second, PlanePoint Place) crossing
    )
    {
        List<PlanePoint> inner = [.. ring[(crossing.First + 1)..(crossing.Second + 1)], crossing.Place];
        List<PlanePoint> outer = [.. ring[..(crossing.First + 1)], crossing.Place, .. ring[(crossing.Second + 1)..]];
        return Math.Abs(Area(inner)) < Math.Abs(Area(outer)) ? (inner, outer) : (outer, inner);
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

    /// <summary>The first crossing from a side on; where there is none, the first of all.</summary>
    private static (int First, int Second, PlanePoint Place)? NextCrossing(List<PlanePoint> ring, int from) =>
        FirstCrossing(ring, from) ?? (from > 0 ? FirstCrossing(ring) : null);

    private static (int First, int Second, PlanePoint Place)? FirstCrossing(List<PlanePoint> ring, int from = 0)
    {
        int count = ring.Count;
        for (int i = from; i < count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % count]);
            double west = Math.Min(a.EastFeet, b.EastFeet),
                east = Math.Max(a.EastFeet, b.EastFeet);
            double south = Math.Min(a.NorthFeet, b.NorthFeet),
                north = Math.Max(a.NorthFeet, b.NorthFeet);
            for (int j = i + 1; j < count; j++)
            {
                var (c, d) = (ring[j], ring[(j + 1) % count]);
                bool apart =
                    Math.Max(c.EastFeet, d.EastFeet) < west
                    || Math.Min(c.EastFeet, d.EastFeet) > east
                    || Math.Max(c.NorthFeet, d.NorthFeet) < south
                    || Math.Min(c.NorthFeet, d.NorthFeet) > north;
                if (!apart && SideCrossing.Find(a, b, c, d, neighbours: j == i + 1 || (i == 0 && j == count - 1)) is { } place)
                {
                    return (i, j, place);
                }
            }
        }

        return null;
    }

    private static string CrossesItself(List<PlanePoint> ring, (int First, int Second, PlanePoint Place) crossing) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"The outline crosses itself at {crossing.Place}: the side from corner {crossing.First + 1} meets the side from "
                + $"corner {crossing.Second + 1} of {ring.Count}. Its two halves would cancel; list the corners in the order "
                + $"you pass them, or split the plot."
        );
}
