using System.Collections.Immutable;
using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>Finds the direction that throws the least seed for its turns.</summary>
internal static class PassDirections
{
    /// <summary>The best direction and the next best one that differs from it; no second one where every other way takes more
    /// turns than are allowed for it.</summary>
    /// <remarks>Of the directions with the fewest turns, and of those with one more that throw clearly less, those that throw the
    /// least seed; of these the ones with the fewest passes; of these one along a side, the shortest way. Passes on the
    /// edge never take a turn more: the nearer they lie, the less seed they throw.</remarks>
    internal static (PassDirection Best, PassDirection? Other) Find(
        ImmutableArray<PlanePoint> outline,
        StripSpans spans,
        double swathFeet,
        bool onEdge
    )
    {
        var found = new List<PassDirection>();
        int fewest = int.MaxValue,
            moreTurns = onEdge ? 0 : (int)SpreadingConstants.All["direction-turns"];
        double plotSquareFeet = LandMath.SignedSquareFeet(outline.AsSpan());
        foreach (var (degrees, isSide, strips) in ByStrips(outline, spans, swathFeet))
        {
            // Every strip holds at least one pass.
            if (fewest < int.MaxValue && strips > fewest + moreTurns)
            {
                break;
            }

            var direction = PassStrips.Measure(spans, degrees, isSide, swathFeet, onEdge);
            found.Add(direction);
            fewest = Math.Min(fewest, direction.Passes);
        }

        found.RemoveAll(d => d.Passes > fewest + moreTurns);
        double equalSquareFeet = plotSquareFeet * SpreadingConstants.All["direction-seed"] / 100,
            leastThrown = found.Where(d => d.Passes == fewest).Min(d => d.ThrownSquareFeet),
            worthATurn = plotSquareFeet * SpreadingConstants.All["turn-seed"] / 100;
        found.RemoveAll(d => d.Passes > fewest && d.ThrownSquareFeet > leastThrown - worthATurn);
        var best = Best(found, equalSquareFeet);
        double apart = SpreadingConstants.All["direction-apart"];
        var others = found.Where(d => d.DegreesFrom(best) >= apart).ToList();
        return (best, others.Count == 0 ? null : Best(others, equalSquareFeet));
    }

    private static PassDirection Best(List<PassDirection> found, double equalSquareFeet)
    {
        double least = found.Min(d => d.ThrownSquareFeet);
        return found
            .Where(d => !Tolerance.IsAbove(d.ThrownSquareFeet, least + equalSquareFeet))
            .OrderBy(d => d.Passes)
            .ThenByDescending(d => d.IsAlongSide)
            .ThenBy(d => d.LengthFeet)
            .First();
    }

    /// <summary>The directions to try, those with the fewest strips first.</summary>
    private static IEnumerable<(double Degrees, bool IsSide, int Strips)> ByStrips(
        ImmutableArray<PlanePoint> outline,
        StripSpans spans,
        double swathFeet
    )
    {
        var tried = new List<(double Degrees, bool IsSide, int Strips)>();
        foreach (var (degrees, isSide) in Directions(outline, swathFeet))
        {
            spans.Turn(degrees);
            tried.Add((degrees, isSide, PassStrips.Count(spans.HighFeet - spans.LowFeet, swathFeet)));
        }

        return tried.OrderBy(t => t.Strips);
    }

    /// <summary>Along every side at least a swath long, the longest first, and every whole degree.</summary>
    private static IEnumerable<(double Degrees, bool IsSide)> Directions(ImmutableArray<PlanePoint> outline, double swathFeet) =>
        Enumerable
            .Range(0, outline.Length)
            .Select(i => (From: outline[i], To: outline[(i + 1) % outline.Length]))
            .Select(s => (East: s.To.EastFeet - s.From.EastFeet, North: s.To.NorthFeet - s.From.NorthFeet))
            .Select(s =>
                (Feet: Math.Sqrt(s.East * s.East + s.North * s.North), Degrees: Math.Atan2(s.North, s.East) * 180 / Math.PI)
            )
            .Where(s => s.Feet >= swathFeet)
            .OrderByDescending(s => s.Feet)
            .Select(s =>
                s.Degrees < 0 ? s.Degrees + 180
                : s.Degrees >= 180 ? s.Degrees - 180
                : s.Degrees
            )
            .Distinct()
            .Select(d => (d, true))
            .Concat(Enumerable.Range(0, 180).Select(d => ((double)d, false)));
}
