using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>Rings turned so that passes run along one axis, and what of them lies in a strip between two lines.</summary>
internal sealed class StripSpans
{
    private readonly record struct Side(double LowAcross, double LowAlong, double HighAcross, double HighAlong)
    {
        internal double AlongAt(double across) =>
            across <= LowAcross ? LowAlong
            : across >= HighAcross ? HighAlong
            : Interpolation.Line(LowAcross, LowAlong, HighAcross, HighAlong, across);
    }

    private readonly double eastPerAlong;
    private readonly double northPerAlong;
    private readonly List<Side> sides = [];

    /// <param name="rings">Rings that do not cross themselves or each other.</param>
    /// <param name="alongDegrees">Direction of the passes, degrees counter-clockwise from east.</param>
    internal StripSpans(IEnumerable<ImmutableArray<PlanePoint>> rings, double alongDegrees)
    {
        (northPerAlong, eastPerAlong) = Math.SinCos(alongDegrees * Math.PI / 180);
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Length; i++)
            {
                var (along, across) = Turned(ring[i]);
                var (nextAlong, nextAcross) = Turned(ring[(i + 1) % ring.Length]);
                sides.Add(
                    across <= nextAcross
                        ? new Side(across, along, nextAcross, nextAlong)
                        : new Side(nextAcross, nextAlong, across, along)
                );
            }
        }

        LowFeet = sides.Min(s => s.LowAcross);
        HighFeet = sides.Max(s => s.HighAcross);
    }

    /// <summary>Gets the lowest line that touches the rings, in feet across the passes.</summary>
    internal double LowFeet { get; }

    /// <summary>Gets the highest line that touches the rings.</summary>
    internal double HighFeet { get; }

    /// <summary>The stretches along the passes that cover all of the rings between two lines, from low to high.</summary>
    /// <param name="fromFeet">Lower line.</param>
    /// <param name="toFeet">Upper line.</param>
    /// <param name="shortestGapFeet">Stretches nearer than this are one.</param>
    internal List<(double From, double To)> Between(double fromFeet, double toFeet, double shortestGapFeet)
    {
        var touching = sides.Where(s => s.LowAcross < toFeet && s.HighAcross > fromFeet).ToList();
        double[] lines =
        [
            .. touching
                .SelectMany(s => new[] { s.LowAcross, s.HighAcross })
                .Where(a => a > fromFeet && a < toFeet)
                .Append(fromFeet)
                .Append(toFeet)
                .Distinct()
                .Order(),
        ];
        var stretches = new List<(double From, double To)>();
        for (int i = 0; i + 1 < lines.Length; i++)
        {
            var (low, high) = (lines[i], lines[i + 1]);
            double middle = (low + high) / 2;
            var crossing = touching
                .Where(s => s.LowAcross < middle && s.HighAcross > middle)
                .OrderBy(s => s.AlongAt(middle))
                .ToList();
            for (int k = 0; k + 1 < crossing.Count; k += 2)
            {
                stretches.Add(
                    (
                        Math.Min(crossing[k].AlongAt(low), crossing[k].AlongAt(high)),
                        Math.Max(crossing[k + 1].AlongAt(low), crossing[k + 1].AlongAt(high))
                    )
                );
            }
        }

        var joined = new List<(double From, double To)>();
        foreach (var stretch in stretches.OrderBy(s => s.From))
        {
            if (joined.Count > 0 && stretch.From - joined[^1].To < shortestGapFeet)
            {
                joined[^1] = (joined[^1].From, Math.Max(joined[^1].To, stretch.To));
            }
            else
            {
                joined.Add(stretch);
            }
        }

        return joined;
    }

    /// <summary>The place on the plot's plane of a place along and across the passes.</summary>
    internal PlanePoint Place(double alongFeet, double acrossFeet) =>
        PlanePoint.FromFeet(
            alongFeet * eastPerAlong - acrossFeet * northPerAlong,
            alongFeet * northPerAlong + acrossFeet * eastPerAlong
        );

    private (double Along, double Across) Turned(PlanePoint place) =>
        (
            place.EastFeet * eastPerAlong + place.NorthFeet * northPerAlong,
            place.NorthFeet * eastPerAlong - place.EastFeet * northPerAlong
        );
}
