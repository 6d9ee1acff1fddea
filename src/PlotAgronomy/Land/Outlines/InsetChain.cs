using System.Collections.Immutable;

namespace PlotAgronomy.Land;

/// <summary>Chains the pieces of a moved line into rings.</summary>
internal static class InsetChain
{
    /// <summary>Closed counter-clockwise rings of the pieces; null when they do not close.</summary>
    internal static List<ImmutableArray<PlanePoint>>? Close(List<InsetPiece> pieces, double stripFeet, double sizeFeet)
    {
        double snapFeet = 100 * Tolerance.Dust * sizeFeet;
        var byStart = new Dictionary<(long, long), List<int>>();
        for (int i = 0; i < pieces.Count; i++)
        {
            var key = Cell(pieces[i].Start, snapFeet);
            if (!byStart.TryGetValue(key, out var list))
            {
                byStart.Add(key, list = []);
            }

            list.Add(i);
        }

        var used = new bool[pieces.Count];
        var rings = new List<ImmutableArray<PlanePoint>>();
        for (int first = 0; first < pieces.Count; first++)
        {
            if (used[first])
            {
                continue;
            }

            var ring = ImmutableArray.CreateBuilder<PlanePoint>();
            int at = first;
            do
            {
                used[at] = true;
                ring.AddRange(pieces[at].Places(stripFeet));
                int next = Next(pieces[at].End, first);
                if (next < 0)
                {
                    return null;
                }

                at = next;
            } while (at != first);

            double squareFeet = ring.Count < 3 ? 0 : LandMath.SignedSquareFeet(ring.ToArray());
            if (squareFeet < -Tolerance.Dust * sizeFeet * sizeFeet)
            {
                return null;
            }

            if (squareFeet > Tolerance.Dust * sizeFeet * sizeFeet)
            {
                rings.Add(ring.ToImmutable());
            }
        }

        return rings;

        int Next(PlanePoint end, int first)
        {
            var (east, north) = Cell(end, snapFeet);
            int best = -1;
            double nearest = snapFeet;
            for (long x = east - 1; x <= east + 1; x++)
            {
                for (long y = north - 1; y <= north + 1; y++)
                {
                    foreach (int i in byStart.GetValueOrDefault((x, y)) ?? [])
                    {
                        double feet = LandMath.DistanceFeet(pieces[i].Start, end);
                        if ((!used[i] || i == first) && feet <= nearest)
                        {
                            (best, nearest) = (i, feet);
                        }
                    }
                }
            }

            return best;
        }
    }

    private static (long, long) Cell(PlanePoint place, double snapFeet) =>
        ((long)Math.Floor(place.EastFeet / snapFeet), (long)Math.Floor(place.NorthFeet / snapFeet));
}
