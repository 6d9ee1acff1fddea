using System.Collections.Immutable;

namespace PlotAgronomy.Land;

/// <summary>The places of a ring at least so far from its sides.</summary>
/// <remarks>Every side is moved inwards, inward corners are joined by arcs, all pieces are split where they cross, and the
/// pieces that lie far enough from every side are chained into rings.</remarks>
internal static class RingInset
{
    /// <summary>A place this much too near, beside the size of the ring, still counts as far enough.</summary>
    private const double Slack = 1e-12;

    internal static IEnumerable<ImmutableArray<PlanePoint>> Find(ImmutableArray<PlanePoint> ring, double stripFeet)
    {
        if (stripFeet == 0)
        {
            return [ring];
        }

        // Where pieces meet in one point or lie on each other, a hair's breadth of strip more or less parts them.
        foreach (double hair in (ReadOnlySpan<double>)[0, 3e-8, -5e-8, 2e-7])
        {
            if (InsetChain.Close(KeptPieces(ring, stripFeet * (1 + hair)), stripFeet * (1 + hair), SizeFeet(ring)) is { } rings)
            {
                return rings;
            }
        }

        throw new InvalidOperationException(
            "The outline's corners lie too close together to draw a strip along them; leave out some of them."
        );
    }

    /// <summary>What of a convex ring lies at least so far from the line of one side; null when nothing does.</summary>
    internal static ImmutableArray<PlanePoint>? CutAlong(ImmutableArray<PlanePoint> ring, int side, double stripFeet)
    {
        var (a, b) = (ring[side], ring[(side + 1) % ring.Length]);
        double length = LandMath.DistanceFeet(a, b);
        var left = ImmutableArray.CreateBuilder<PlanePoint>();
        for (int i = 0; i < ring.Length; i++)
        {
            var (p, q) = (ring[i], ring[(i + 1) % ring.Length]);
            double pFeet = LandMath.Cross(a, b, p) / length - stripFeet,
                qFeet = LandMath.Cross(a, b, q) / length - stripFeet;
            if (pFeet >= 0)
            {
                left.Add(p);
            }

            if (pFeet > 0 != qFeet > 0 && pFeet != 0 && qFeet != 0)
            {
                left.Add(LandMath.Along(p, q, pFeet / (pFeet - qFeet)));
            }
        }

        return left.Count >= 3 && LandMath.SignedSquareFeet(left.ToArray()) > 0 ? left.ToImmutable() : null;
    }

    private static List<InsetPiece> KeptPieces(ImmutableArray<PlanePoint> ring, double stripFeet)
    {
        double sizeFeet = SizeFeet(ring);
        double leastFeet = stripFeet - Slack * sizeFeet;
        var pieces = MovedSides(ring, stripFeet, leastFeet);
        var cuts = Crossings(pieces, stripFeet);
        var kept = new List<InsetPiece>();
        for (int i = 0; i < pieces.Count; i++)
        {
            var piece = pieces[i];
            PlanePoint[] stops = [piece.Start, .. cuts[i].OrderBy(c => c.Part).Select(c => c.Place), piece.End];
            for (int k = 0; k + 1 < stops.Length; k++)
            {
                var part = piece with { Start = stops[k], End = stops[k + 1] };
                if (
                    LandMath.DistanceFeet(part.Start, part.End) > Tolerance.Dust * sizeFeet
                    && IsInside(ring, part.Middle(stripFeet), leastFeet, part.Side)
                )
                {
                    kept.Add(part);
                }
            }
        }

        return kept;
    }

    /// <summary>Every side moved inwards and the arcs between them, but for pieces of which nothing can remain.</summary>
    private static List<InsetPiece> MovedSides(ImmutableArray<PlanePoint> ring, double stripFeet, double leastFeet)
    {
        var pieces = new List<InsetPiece>();
        for (int i = 0; i < ring.Length; i++)
        {
            var (a, b, c) = (ring[i], ring[(i + 1) % ring.Length], ring[(i + 2) % ring.Length]);
            var end = Moved(b, a, b, stripFeet);
            Add(new InsetPiece(Moved(a, a, b, stripFeet), end, null, i));
            if (LandMath.Cross(a, b, c) < 0)
            {
                // An inward corner: walk round it at the strip's distance.
                foreach (var piece in new InsetPiece(end, Moved(b, b, c, stripFeet), b, i).Shortened(stripFeet))
                {
                    Add(piece);
                }
            }
        }

        return pieces;

        void Add(InsetPiece piece)
        {
            if (!IsTooNear(ring, piece, leastFeet - piece.RiseFeet(stripFeet)))
            {
                pieces.Add(piece);
            }
        }
    }

    /// <summary>Whether one side alone lies too near to the whole piece: both ends too near make a straight piece so, and an
    /// arc but for its rise.</summary>
    private static bool IsTooNear(ImmutableArray<PlanePoint> ring, InsetPiece piece, double limitFeet) =>
        AnySide(ring, piece.Side, (a, b) =>
            LandMath.DistanceFeet(piece.Start, a, b) < limitFeet && LandMath.DistanceFeet(piece.End, a, b) < limitFeet
        );

    /// <summary>Whether any side does; those next to a given one are asked first, because on a walked track they nearly
    /// always decide.</summary>
    private static bool AnySide(ImmutableArray<PlanePoint> ring, int side, Func<PlanePoint, PlanePoint, bool> does)
    {
        for (int step = 0; step <= ring.Length / 2; step++)
        {
            int ahead = (side + step) % ring.Length,
                behind = (side - step + ring.Length) % ring.Length;
            if (does(ring[ahead], ring[(ahead + 1) % ring.Length]) || does(ring[behind], ring[(behind + 1) % ring.Length]))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>For every piece the places where others cross it.</summary>
    private static List<(double Part, PlanePoint Place)>[] Crossings(List<InsetPiece> pieces, double stripFeet)
    {
        var cuts = new List<(double, PlanePoint)>[pieces.Count];
        for (int i = 0; i < pieces.Count; i++)
        {
            cuts[i] = [];
        }

        var boxes = pieces.Select(p => p.Box(stripFeet)).ToArray();
        for (int i = 0; i < pieces.Count; i++)
        {
            for (int j = i + 1; j < pieces.Count; j++)
            {
                bool apart =
                    boxes[i].West > boxes[j].East
                    || boxes[j].West > boxes[i].East
                    || boxes[i].South > boxes[j].North
                    || boxes[j].South > boxes[i].North;
                bool joined = pieces[i].End == pieces[j].Start || pieces[j].End == pieces[i].Start;
                bool arcOnItsSide = joined && (pieces[i].Center is null) != (pieces[j].Center is null);
                if (apart || arcOnItsSide)
                {
                    continue;
                }

                foreach (var (first, second, place) in InsetPiece.Cross(pieces[i], pieces[j], stripFeet))
                {
                    cuts[i].Add((first, place));
                    cuts[j].Add((second, place));
                }
            }
        }

        return cuts;
    }

    private static bool IsInside(ImmutableArray<PlanePoint> ring, PlanePoint place, double leastFeet, int side) =>
        !AnySide(ring, side, (a, b) => LandMath.DistanceFeet(place, a, b) < leastFeet) && LandMath.Contains(ring.AsSpan(), place);

    /// <summary>A place moved to the left of the walk from a to b.</summary>
    private static PlanePoint Moved(PlanePoint place, PlanePoint a, PlanePoint b, double feet)
    {
        double length = LandMath.DistanceFeet(a, b);
        return new PlanePoint(
            place.EastFeet - feet * (b.NorthFeet - a.NorthFeet) / length,
            place.NorthFeet + feet * (b.EastFeet - a.EastFeet) / length
        );
    }

    /// <summary>The wider of the ring's two extents.</summary>
    private static double SizeFeet(ImmutableArray<PlanePoint> ring) =>
        Math.Max(ring.Max(p => p.EastFeet) - ring.Min(p => p.EastFeet), ring.Max(p => p.NorthFeet) - ring.Min(p => p.NorthFeet));
}
