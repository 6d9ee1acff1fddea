using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <summary>Makes a clean ring of what a person drew or walked, or says why it cannot.</summary>
internal static class OutlineCleaning
{
    internal const int MostPoints = 10_000;

    /// <summary>Corners of a drawing: crossing sides are an error.</summary>
    internal static ImmutableArray<PlanePoint> Corners(IReadOnlyList<PlanePoint> places)
    {
        var ring = WithoutRepeats(places);
        return FirstCrossing(ring) is { } crossing ? throw CrossesItself(ring, crossing) : CounterClockwise(ring);
    }

    /// <summary>A walked track: small loops, from standing still or from walking past the start, are cut away.</summary>
    internal static ImmutableArray<PlanePoint> Track(IReadOnlyList<PlanePoint> places, out ImmutableArray<Finding> findings)
    {
        var found = ImmutableArray.CreateBuilder<Finding>();
        var ring = WithoutRepeats(places);
        double gapFeet = LandMath.DistanceFeet(ring[^1], ring[0]);
        double allowed = LandLimits.Of("cut-loop-part");
        int loops = 0;
        double cutSquareFeet = 0;
        while (FirstCrossing(ring) is { } crossing)
        {
            var inner = ring.GetRange(crossing.First + 1, crossing.Second - crossing.First);
            inner.Add(crossing.Place);
            var outer = ring.GetRange(0, crossing.First + 1);
            outer.Add(crossing.Place);
            outer.AddRange(ring.Skip(crossing.Second + 1));
            double innerSquareFeet = Math.Abs(Area(inner)), outerSquareFeet = Math.Abs(Area(outer));
            if (Math.Min(innerSquareFeet, outerSquareFeet) > allowed * Math.Max(innerSquareFeet, outerSquareFeet))
            {
                throw CrossesItself(ring, crossing);
            }

            loops++;
            cutSquareFeet += Math.Min(innerSquareFeet, outerSquareFeet);
            ring = WithoutRepeats(innerSquareFeet < outerSquareFeet ? outer : inner);
        }

        double aroundFeet = LandMath.PerimeterFeet(ring.ToArray());
        if (loops > 0)
        {
            found.Add(FindingCatalog.Create("land-loops-cut", ("count", loops.ToString(CultureInfo.InvariantCulture)),
                ("area", Amounts.Print(UnitsNet.Area.FromSquareFeet(cutSquareFeet), "ft2", 0))));
        }
        else if (ring.Count >= LandLimits.Of("track-points") && gapFeet > LandLimits.Of("open-gap-part") * aroundFeet)
        {
            found.Add(FindingCatalog.Create("land-outline-open", ("gap", Amounts.Print(Length.FromFeet(gapFeet), decimals: 0)),
                ("percent", $"{Amounts.Print(100 * gapFeet / aroundFeet, 0)} %")));
        }

        findings = found.ToImmutable();
        return CounterClockwise(ring);
    }

    private static double Area(List<PlanePoint> ring) => LandMath.SignedSquareFeet(ring.ToArray());

    private static List<PlanePoint> WithoutRepeats(IReadOnlyList<PlanePoint> places)
    {
        if (places.Count > MostPoints)
        {
            throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"An outline may have at most {MostPoints} corners; this one has {places.Count}."), nameof(places));
        }

        var ring = new List<PlanePoint>(places.Count);
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

        return ring.Count >= 3 ? ring
            : throw new ArgumentException(string.Create(CultureInfo.InvariantCulture, $"An outline needs at least 3 different corners; this one has {ring.Count}."), nameof(places));
    }

    private static ImmutableArray<PlanePoint> CounterClockwise(List<PlanePoint> ring)
    {
        double signed = Area(ring);
        double around = LandMath.PerimeterFeet(ring.ToArray());
        if (Math.Abs(signed) <= 1e-12 * around * around)
        {
            throw new ArgumentException("The corners lie on one line: they enclose no area.", nameof(ring));
        }

        if (signed < 0)
        {
            // The first corner stays first.
            ring.Reverse(1, ring.Count - 1);
        }

        return [.. ring];
    }

    private static (int First, int Second, PlanePoint Place)? FirstCrossing(List<PlanePoint> ring)
    {
        int count = ring.Count;
        for (int i = 0; i < count; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % count]);
            double west = Math.Min(a.EastFeet, b.EastFeet), east = Math.Max(a.EastFeet, b.EastFeet);
            double south = Math.Min(a.NorthFeet, b.NorthFeet), north = Math.Max(a.NorthFeet, b.NorthFeet);
            for (int j = i + 1; j < count; j++)
            {
                var (c, d) = (ring[j], ring[(j + 1) % count]);
                bool apart = Math.Max(c.EastFeet, d.EastFeet) < west || Math.Min(c.EastFeet, d.EastFeet) > east
                    || Math.Max(c.NorthFeet, d.NorthFeet) < south || Math.Min(c.NorthFeet, d.NorthFeet) > north;
                if (!apart && SideCrossing.Find(a, b, c, d, neighbours: j == i + 1 || (i == 0 && j == count - 1)) is { } place)
                {
                    return (i, j, place);
                }
            }
        }

        return null;
    }

    private static ArgumentException CrossesItself(List<PlanePoint> ring, (int First, int Second, PlanePoint Place) crossing) =>
        new(string.Create(CultureInfo.InvariantCulture,
            $"The outline crosses itself at {crossing.Place}: the side from corner {crossing.First + 1} meets the side from corner {crossing.Second + 1} of {ring.Count}. Its two halves would cancel; list the corners in the order you pass them, or split the plot."), nameof(ring));
}
