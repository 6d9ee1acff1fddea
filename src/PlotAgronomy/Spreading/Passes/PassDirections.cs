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
        foreach (var heading in ByStrips(outline, spans, swathFeet))
        {
            // Every strip holds at least one pass.
            if (fewest < int.MaxValue && heading.Strips > fewest + moreTurns)
            {
                break;
            }

            var direction = PassStrips.Measure(spans, heading.Degrees, heading.IsSide, swathFeet, onEdge);
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
    private static IEnumerable<Heading> ByStrips(ImmutableArray<PlanePoint> outline, StripSpans spans, double swathFeet)
    {
        var tried = new List<Heading>();
        foreach (double side in AlongSides(outline, swathFeet))
        {
            Try(side, isSide: true);
        }

        for (int degree = 0; degree < 180; degree++)
        {
            Try(degree, isSide: false);
        }

        return tried.OrderBy(h => h.Strips);

        void Try(double degrees, bool isSide)
        {
            spans.Turn(degrees);
            tried.Add(new(degrees, isSide, PassStrips.Count(spans.HighFeet - spans.LowFeet, swathFeet)));
        }
    }

    /// <summary>Along every side at least a swath long, the longest first.</summary>
    private static IEnumerable<double> AlongSides(ImmutableArray<PlanePoint> outline, double swathFeet) =>
        outline
            .Select((from, i) => new Side(from, outline[(i + 1) % outline.Length]))
            .Where(s => s.Feet >= swathFeet)
            .OrderByDescending(s => s.Feet)
            .Select(s => s.Degrees)
            .Distinct();

    private sealed record Heading(double Degrees, bool IsSide, int Strips);

    private sealed record Side(PlanePoint From, PlanePoint To)
    {
        private double EastFeet => To.EastFeet - From.EastFeet;

        private double NorthFeet => To.NorthFeet - From.NorthFeet;

        internal double Feet => Math.Sqrt(EastFeet * EastFeet + NorthFeet * NorthFeet);

        internal double Degrees =>
            (Math.Atan2(NorthFeet, EastFeet) * 180 / Math.PI) switch
            {
                < 0 and var below => below + 180,
                >= 180 and var above => above - 180,
                var within => within,
            };
    }
}
