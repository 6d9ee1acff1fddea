namespace PlotAgronomy.Spreading;

/// <summary>The order of driving: each piece of the plot finished before the next, the nearest piece next.</summary>
/// <remarks>A piece is a run of neighbouring strips with one stretch each, as far as the plot does not part or join.</remarks>
internal sealed class PassRoute
{
    /// <summary>One pass: strip from 0, its lower and higher end along the strip, and whether it is driven upwards.</summary>
    internal readonly record struct Leg(int Strip, double Low, double High, bool Upwards)
    {
        internal double Start => Upwards ? Low : High;

        internal double End => Upwards ? High : Low;
    }

    private PassRoute(List<Leg> passes, double walkFeet)
    {
        Passes = passes;
        WalkFeet = walkFeet;
    }

    internal List<Leg> Passes { get; }

    /// <summary>Gets the feet walked from piece to piece, straight, where that is more than a turn.</summary>
    internal double WalkFeet { get; }

    /// <summary>Finds the order.</summary>
    /// <param name="strips">Stretches of each strip, from low to high.</param>
    /// <param name="middles">The middle line of each strip.</param>
    /// <param name="turnFeet">A way from pass to pass up to this is a turn.</param>
    internal static PassRoute Over(IReadOnlyList<(double From, double To)[]> strips, double[] middles, double turnFeet)
    {
        var pieces = Pieces(strips);
        // As many pieces have as many starts; with very many of them any start is as good.
        int starts = pieces.Count <= SpreadingConstants.All["starts-tried"] ? pieces.Count : 1;
        PassRoute? best = null;
        for (int piece = 0; piece < starts; piece++)
        {
            foreach (var (fromLow, upwards) in pieces.Count == 1 ? [(true, true)] : Entrances)
            {
                var route = From(pieces, piece, fromLow, upwards, middles, turnFeet);
                if (best is null || Tolerance.IsBelow(route.WalkFeet, best.WalkFeet))
                {
                    best = route;
                }
            }
        }

        return best ?? new PassRoute([], 0);
    }

    /// <summary>The four ways into a piece: at its lowest or highest strip, upwards or downwards along it.</summary>
    private static readonly (bool FromLow, bool Upwards)[] Entrances =
    [
        (true, true),
        (true, false),
        (false, true),
        (false, false),
    ];

    private static PassRoute From(
        List<List<(int Strip, double From, double To)>> pieces,
        int first,
        bool fromLow,
        bool upwards,
        double[] middles,
        double turnFeet
    )
    {
        var passes = new List<Leg>();
        var left = new List<int>(Enumerable.Range(0, pieces.Count));
        double walk = 0;
        Drive(pieces[first], fromLow, upwards, passes);
        left.Remove(first);
        while (left.Count > 0)
        {
            var at = passes[^1];
            var nearest = (Feet: double.PositiveInfinity, Place: 0, FromLow: true, Upwards: true);
            for (int k = 0; k < left.Count; k++)
            {
                foreach (var way in Entrances)
                {
                    var piece = pieces[left[k]];
                    var (strip, from, to) = way.FromLow ? piece[0] : piece[^1];
                    double along = (way.Upwards ? from : to) - at.End,
                        across = middles[strip] - middles[at.Strip];
                    double feet = Math.Sqrt(along * along + across * across);
                    if (feet < nearest.Feet)
                    {
                        nearest = (feet, k, way.FromLow, way.Upwards);
                    }
                }
            }

            walk += nearest.Feet > turnFeet ? nearest.Feet : 0;
            Drive(pieces[left[nearest.Place]], nearest.FromLow, nearest.Upwards, passes);
            left.RemoveAt(nearest.Place);
        }

        return new PassRoute(passes, walk);
    }

    private static void Drive(List<(int Strip, double From, double To)> piece, bool fromLow, bool upwards, List<Leg> passes)
    {
        for (int i = 0; i < piece.Count; i++)
        {
            var (strip, from, to) = piece[fromLow ? i : piece.Count - 1 - i];
            passes.Add(new Leg(strip, from, to, i % 2 == 0 ? upwards : !upwards));
        }
    }

    private static List<List<(int Strip, double From, double To)>> Pieces(IReadOnlyList<(double From, double To)[]> strips)
    {
        var pieces = new List<List<(int Strip, double From, double To)>>();
        int[] before = [];
        for (int strip = 0; strip < strips.Count; strip++)
        {
            var stretches = strips[strip];
            var last = strip == 0 ? [] : strips[strip - 1];
            int[] now = new int[stretches.Length];
            for (int i = 0; i < stretches.Length; i++)
            {
                int below = Only(last, stretches[i]);
                if (below < 0 || Only(stretches, last[below]) != i)
                {
                    now[i] = pieces.Count;
                    pieces.Add([]);
                }
                else
                {
                    now[i] = before[below];
                }

                pieces[now[i]].Add((strip, stretches[i].From, stretches[i].To));
            }

            before = now;
        }

        return pieces;
    }

    /// <summary>The one stretch beside another; -1 when none or several lie beside it.</summary>
    private static int Only((double From, double To)[] stretches, (double From, double To) beside)
    {
        int only = -1;
        for (int i = 0; i < stretches.Length; i++)
        {
            if (stretches[i].From < beside.To && stretches[i].To > beside.From)
            {
                if (only >= 0)
                {
                    return -1;
                }

                only = i;
            }
        }

        return only;
    }
}
