using System.Collections.Immutable;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>Rings turned so that passes run along one axis, and what of them lies in a strip between two lines.</summary>
/// <remarks>One object serves all directions: what it holds is filled anew by <see cref="Turn"/>.</remarks>
internal sealed class StripSpans
{
    private readonly PlanePoint[] corners;

    /// <summary>The corner that ends the side of each corner.</summary>
    private readonly int[] next;
    private readonly double[] along;
    private readonly double[] across;
    private readonly double[] lows;
    private readonly int[] order;
    private readonly List<int> active = [];
    private readonly List<double> crossings = [];
    private readonly List<(double From, double To)> stretches = [];
    private double eastPerAlong;
    private double northPerAlong;
    private int waiting;

    /// <param name="rings">Rings that do not cross themselves or each other.</param>
    internal StripSpans(IReadOnlyCollection<ImmutableArray<PlanePoint>> rings)
    {
        corners = new PlanePoint[rings.Sum(r => r.Length)];
        next = new int[corners.Length];
        int start = 0;
        foreach (var ring in rings)
        {
            ring.CopyTo(corners, start);
            for (int i = 0; i < ring.Length; i++)
            {
                next[start + i] = start + (i + 1) % ring.Length;
            }

            start += ring.Length;
        }

        along = new double[corners.Length];
        across = new double[corners.Length];
        lows = new double[corners.Length];
        order = new int[corners.Length];
    }

    /// <summary>Gets the lowest line that touches the rings, in feet across the passes.</summary>
    internal double LowFeet { get; private set; }

    /// <summary>Gets the highest line that touches the rings.</summary>
    internal double HighFeet { get; private set; }

    /// <summary>Turns the rings.</summary>
    /// <param name="alongDegrees">Direction of the passes, degrees counter-clockwise from east.</param>
    internal void Turn(double alongDegrees)
    {
        (northPerAlong, eastPerAlong) = Math.SinCos(alongDegrees * Math.PI / 180);
        (LowFeet, HighFeet) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int i = 0; i < corners.Length; i++)
        {
            var (east, north) = (corners[i].EastFeet, corners[i].NorthFeet);
            along[i] = east * eastPerAlong + north * northPerAlong;
            across[i] = north * eastPerAlong - east * northPerAlong;
            LowFeet = Math.Min(LowFeet, across[i]);
            HighFeet = Math.Max(HighFeet, across[i]);
        }
    }

    /// <summary>Makes ready for strips asked for from the lowest upwards.</summary>
    internal void StartBelow()
    {
        for (int i = 0; i < corners.Length; i++)
        {
            order[i] = i;
            lows[i] = Low(i);
        }

        Array.Sort(lows, order);
        active.Clear();
        waiting = 0;
    }

    /// <summary>The stretches along the passes that cover all of the rings between two lines, from low to high. Each call
    /// must lie
    /// above the one before; the list is good until the next call.</summary>
    /// <param name="fromFeet">Lower line.</param>
    /// <param name="toFeet">Upper line.</param>
    /// <param name="shortestGapFeet">Stretches nearer than this are one.</param>
    /// <remarks>A piece of the plot between two lines reaches as far along them as its edge: the sides between the lines, and the
    /// lines themselves where they cross the plot.</remarks>
    internal List<(double From, double To)> Between(double fromFeet, double toFeet, double shortestGapFeet)
    {
        TakeUp(fromFeet, toFeet);
        stretches.Clear();
        foreach (int side in active)
        {
            double one = AlongAt(side, Math.Max(Low(side), fromFeet)),
                other = AlongAt(side, Math.Min(High(side), toFeet));
            stretches.Add((Math.Min(one, other), Math.Max(one, other)));
        }

        AddChords(fromFeet, above: true);
        AddChords(toFeet, above: false);
        stretches.Sort();
        int kept = 0;
        for (int i = 1; i < stretches.Count; i++)
        {
            if (stretches[i].From - stretches[kept].To < shortestGapFeet)
            {
                stretches[kept] = (stretches[kept].From, Math.Max(stretches[kept].To, stretches[i].To));
            }
            else
            {
                stretches[++kept] = stretches[i];
            }
        }

        if (stretches.Count > 0)
        {
            stretches.RemoveRange(kept + 1, stretches.Count - kept - 1);
        }

        return stretches;
    }

    /// <summary>Where one line crosses the rings, from low to high; every two hold a stretch of the plot between them. The
    /// list is
    /// good until the next call.</summary>
    internal List<double> On(double lineFeet)
    {
        TakeUp(lineFeet, lineFeet);
        Cross(lineFeet, above: true);
        return crossings;
    }

    /// <summary>The place on the plot's plane of a place along and across the passes.</summary>
    internal PlanePoint Place(double alongFeet, double acrossFeet) =>
        PlanePoint.FromFeet(
            alongFeet * eastPerAlong - acrossFeet * northPerAlong,
            alongFeet * northPerAlong + acrossFeet * eastPerAlong
        );

    /// <summary>A place of the plane, along and across the passes.</summary>
    internal (double Along, double Across) Turned(PlanePoint place) =>
        (
            place.EastFeet * eastPerAlong + place.NorthFeet * northPerAlong,
            place.NorthFeet * eastPerAlong - place.EastFeet * northPerAlong
        );

    private void TakeUp(double fromFeet, double toFeet)
    {
        while (waiting < order.Length && (lows[waiting] < toFeet || lows[waiting] <= fromFeet))
        {
            active.Add(order[waiting++]);
        }

        active.RemoveAll(side => High(side) <= fromFeet);
    }

    private void AddChords(double lineFeet, bool above)
    {
        Cross(lineFeet, above);
        for (int k = 0; k + 1 < crossings.Count; k += 2)
        {
            stretches.Add((crossings[k], crossings[k + 1]));
        }
    }

    /// <summary>Crossings just above or just below a line, so that a corner on it counts once or twice, never half.</summary>
    private void Cross(double lineFeet, bool above)
    {
        crossings.Clear();
        foreach (int side in active)
        {
            double low = Low(side),
                high = High(side);
            if (above ? low <= lineFeet && lineFeet < high : low < lineFeet && lineFeet <= high)
            {
                crossings.Add(AlongAt(side, lineFeet));
            }
        }

        crossings.Sort();
    }

    private double Low(int side) => Math.Min(across[side], across[next[side]]);

    private double High(int side) => Math.Max(across[side], across[next[side]]);

    private double AlongAt(int side, double acrossFeet)
    {
        int end = next[side];
        var (low, high) = across[side] <= across[end] ? (side, end) : (end, side);
        return acrossFeet <= across[low] ? along[low]
            : acrossFeet >= across[high] ? along[high]
            : Interpolation.Line(across[low], along[low], across[high], along[high], acrossFeet);
    }
}
