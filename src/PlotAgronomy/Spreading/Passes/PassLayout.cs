using System.Collections.Immutable;
using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>Straight, evenly spaced passes over rings, in one direction or in the one with the fewest turns.</summary>
internal sealed class PassLayout
{
    private PassLayout(
        double alongDegrees,
        double spacingFeet,
        ImmutableArray<(int Strip, PlanePoint Start, PlanePoint End)> passes,
        double lengthFeet
    )
    {
        AlongDegrees = alongDegrees;
        SpacingFeet = spacingFeet;
        Passes = passes;
        LengthFeet = lengthFeet;
    }

    /// <summary>Gets the direction in degrees counter-clockwise from east.</summary>
    internal double AlongDegrees { get; }

    internal double SpacingFeet { get; }

    internal ImmutableArray<(int Strip, PlanePoint Start, PlanePoint End)> Passes { get; }

    internal double LengthFeet { get; }

    internal static int StripCount(double widthFeet, double swathFeet) =>
        Math.Max(1, (int)Tolerance.Ceiling(SpreaderMath.SwathsAcross(widthFeet, swathFeet)));

    internal static PassLayout Along(
        double alongDegrees,
        ImmutableArray<ImmutableArray<PlanePoint>> rings,
        double swathFeet,
        FirstPassPlacement first
    ) => Over(new StripSpans(rings, alongDegrees), alongDegrees, swathFeet, first);

    /// <summary>The layout with the fewest passes; of equal ones the shortest; then the first found.</summary>
    internal static PassLayout FewestTurns(
        ImmutableArray<PlanePoint> outline,
        ImmutableArray<ImmutableArray<PlanePoint>> rings,
        double swathFeet,
        FirstPassPlacement first
    )
    {
        PassLayout? best = null;
        foreach (double degrees in Directions(outline, swathFeet))
        {
            var spans = new StripSpans(rings, degrees);
            if (best is not null && StripCount(spans.HighFeet - spans.LowFeet, swathFeet) > best.Passes.Length)
            {
                // Every strip holds at least one pass.
                continue;
            }

            var layout = Over(spans, degrees, swathFeet, first);
            if (
                best is null
                || layout.Passes.Length < best.Passes.Length
                || (layout.Passes.Length == best.Passes.Length && Tolerance.IsBelow(layout.LengthFeet, best.LengthFeet))
            )
            {
                best = layout;
            }
        }

        return best!;
    }

    private static PassLayout Over(StripSpans spans, double alongDegrees, double swathFeet, FirstPassPlacement first)
    {
        double widthFeet = spans.HighFeet - spans.LowFeet;
        int intervals = StripCount(widthFeet, swathFeet);
        bool onEdge = first == FirstPassPlacement.OnEdge;
        int strips = onEdge ? intervals + 1 : intervals;
        double spacing = onEdge ? SpreaderMath.SpacingOnEdgeFeet(widthFeet, strips) : SpreaderMath.SpacingFeet(widthFeet, strips);
        var passes = ImmutableArray.CreateBuilder<(int, PlanePoint, PlanePoint)>();
        double length = 0;
        for (int strip = 0; strip < strips; strip++)
        {
            double middle = spans.LowFeet + (onEdge ? strip : strip + 0.5) * spacing;
            // The outer strips reach past the plot by arithmetic dust only.
            double from = strip == 0 ? spans.LowFeet : middle - spacing / 2,
                to = strip == strips - 1 ? spans.HighFeet : middle + spacing / 2;
            var stretches = spans.Between(from, to, swathFeet);
            bool back = strip % 2 == 1;
            foreach (var (start, end) in back ? Enumerable.Reverse(stretches) : stretches)
            {
                passes.Add((strip + 1, spans.Place(back ? end : start, middle), spans.Place(back ? start : end, middle)));
                length += end - start;
            }
        }

        return new PassLayout(alongDegrees, spacing, passes.ToImmutable(), length);
    }

    /// <summary>Along every side at least a swath long, the longest first, and every whole degree.</summary>
    private static IEnumerable<double> Directions(ImmutableArray<PlanePoint> outline, double swathFeet) =>
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
            .Concat(Enumerable.Range(0, 180).Select(d => (double)d))
            .Distinct();
}
