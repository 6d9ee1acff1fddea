using System.Collections.Immutable;
using PlotAgronomy.Land;

namespace PlotAgronomy.Spreading;

/// <summary>Straight, evenly spaced passes over rings in one direction, in the order of driving.</summary>
internal sealed class PassLayout
{
    private PassLayout(PassDirection direction, PassDirection? other, PassRoute route, StripSpans spans, double[] middles)
    {
        Direction = direction;
        Other = other;
        WalkFeet = route.WalkFeet;
        StartsUpwards = route.Passes[0].Upwards;
        Stretches = [.. route.Passes.Select(p => (p.Strip, p.Low, p.High, middles[p.Strip]))];
        Passes =
        [
            .. route.Passes.Select(p =>
                (p.Strip + 1, spans.Place(p.Start, middles[p.Strip]), spans.Place(p.End, middles[p.Strip]))
            ),
        ];
    }

    internal PassDirection Direction { get; }

    /// <summary>Gets the next best direction; null when the direction was given or no other is nearly as good.</summary>
    internal PassDirection? Other { get; }

    /// <summary>Gets the passes in the order of driving, strips numbered from 1.</summary>
    internal ImmutableArray<(int Strip, PlanePoint Start, PlanePoint End)> Passes { get; }

    /// <summary>Gets the same passes along and across the direction: strip from 0, its ends and its middle line.</summary>
    internal ImmutableArray<(int Strip, double Low, double High, double Middle)> Stretches { get; }

    /// <summary>Gets the walk with a shut gate from piece to piece of a plot whose strips fall apart.</summary>
    internal double WalkFeet { get; }

    /// <summary>Gets a value indicating whether the first pass runs in the direction, not against it.</summary>
    internal bool StartsUpwards { get; }

    internal static PassLayout Along(
        double alongDegrees,
        IReadOnlyCollection<ImmutableArray<PlanePoint>> rings,
        double swathFeet,
        FirstPassPlacement first
    )
    {
        var spans = new StripSpans(rings);
        bool onEdge = first == FirstPassPlacement.OnEdge;
        return Lay(PassStrips.Measure(spans, alongDegrees, false, swathFeet, onEdge), null, spans, swathFeet, onEdge);
    }

    /// <summary>The layout that throws the least seed for its turns.</summary>
    internal static PassLayout LeastSeed(
        ImmutableArray<PlanePoint> outline,
        IReadOnlyCollection<ImmutableArray<PlanePoint>> rings,
        double swathFeet,
        FirstPassPlacement first
    )
    {
        var spans = new StripSpans(rings);
        bool onEdge = first == FirstPassPlacement.OnEdge;
        var (best, other) = PassDirections.Find(outline, spans, swathFeet, onEdge);
        return Lay(best, other, spans, swathFeet, onEdge);
    }

    private static PassLayout Lay(PassDirection direction, PassDirection? other, StripSpans spans, double swathFeet, bool onEdge)
    {
        var strips = new List<(double From, double To)[]>();
        var middles = new List<double>();
        double spacing = PassStrips.Through(spans, direction.AlongDegrees, swathFeet, onEdge, (middle, stretches) =>
        {
            strips.Add([.. stretches]);
            middles.Add(middle);
        });
        double[] lines = [.. middles];
        var route = PassRoute.Over(strips, lines, SpreadingConstants.All["turn-reach"] * spacing);
        return new PassLayout(direction, other, route, spans, lines);
    }
}
