using System.Runtime.InteropServices;

namespace PlotAgronomy.Land;

/// <summary>A ring whose sides are found by where they lie, so that a long track with many loops is searched fast.</summary>
/// <remarks>Corners keep their numbers while others are cut away: <see cref="Corner.Next"/> leads round what is left.</remarks>
internal sealed class TrackRing
{
    private record struct Corner(PlanePoint Place, int Before, int Next, bool IsCut);

    private Corner[] corners;
    private readonly Dictionary<(int Column, int Row), List<int>> cells = [];
    private readonly double cellFeet;
    private double squareFeet;

    /// <param name="ring">Corners, the first not repeated, no two neighbours alike.</param>
    internal TrackRing(List<PlanePoint> ring)
    {
        int count = ring.Count;
        corners = new Corner[count];
        for (int i = 0; i < count; i++)
        {
            corners[i] = new Corner(ring[i], (i + count - 1) % count, (i + 1) % count, false);
        }

        var places = CollectionsMarshal.AsSpan(ring);
        squareFeet = LandMath.SignedSquareFeet(places);
        double wide = ring.Max(p => p.EastFeet) - ring.Min(p => p.EastFeet),
            high = ring.Max(p => p.NorthFeet) - ring.Min(p => p.NorthFeet);
        // As many cells along the longer way as a square field of them would have.
        double feet = Math.Max(Math.Max(wide, high) / Math.Sqrt(count), LandMath.PerimeterFeet(places) / count);
        cellFeet = feet > 0 ? feet : 1;
        Count = count;
        for (int i = 0; i < count; i++)
        {
            Enter(i);
        }
    }

    internal int First { get; private set; }

    internal int Count { get; private set; }

    internal PlanePoint this[int corner] => corners[corner].Place;

    internal List<PlanePoint> ToList() => [.. Round().Select(i => corners[i].Place)];

    /// <summary>Number of a corner from 1, counted from the first.</summary>
    internal int NumberOf(int corner) => 1 + Round().TakeWhile(i => i != corner).Count();

    /// <summary>The first crossing of a side from a corner on; where there is none, the first of all.</summary>
    internal (int First, int Second, PlanePoint Place)? NextCrossing(int from) =>
        CrossingFrom(from) ?? (from != First ? CrossingFrom(First) : null);

    /// <summary>The ground inside the part that runs from one side to the one that crosses it, and in the rest; signed.</summary>
    internal (double Inner, double Outer) Grounds((int First, int Second, PlanePoint Place) crossing)
    {
        double inner = 0;
        for (int i = corners[crossing.First].Next; i != crossing.Second; i = corners[i].Next)
        {
            inner += LandMath.Cross(crossing.Place, corners[i].Place, corners[corners[i].Next].Place) / 2;
        }

        return (inner, squareFeet - inner);
    }

    /// <summary>Cuts away the part between two sides that cross.</summary>
    /// <returns>The corner to search on from.</returns>
    internal int CutInner((int First, int Second, PlanePoint Place) crossing)
    {
        squareFeet = Grounds(crossing).Outer;
        int end = corners[crossing.Second].Next,
            kept = corners[crossing.First].Next;
        Drop(kept, end);
        Join(crossing.First, kept, end, crossing.Place);
        int before = corners[crossing.First].Before;
        return crossing.First == First ? First : before;
    }

    /// <summary>Keeps only the part between two sides that cross.</summary>
    internal void CutOuter((int First, int Second, PlanePoint Place) crossing)
    {
        squareFeet = Grounds(crossing).Inner;
        int first = corners[crossing.First].Next,
            last = crossing.Second + 1;
        Drop(corners[crossing.Second].Next, first);
        First = first;
        if (last == corners.Length)
        {
            Array.Resize(ref corners, 2 * last);
        }

        Join(crossing.Second, last, first, crossing.Place);
    }

    /// <summary>Leads from one corner by a new place, which takes the number of a corner cut away, to another.</summary>
    private void Join(int from, int number, int to, PlanePoint place)
    {
        if (corners[from].Place == place || corners[to].Place == place)
        {
            Link(from, to);
            if (corners[from].Place == corners[to].Place && Count > 1)
            {
                int after = corners[to].Next;
                corners[to].IsCut = true;
                Count--;
                First = First == to ? after : First;
                Link(from, after);
            }
        }
        else
        {
            corners[number] = new Corner(place, from, to, false);
            Count++;
            Link(from, number);
            Link(number, to);
            Enter(number);
        }

        Enter(from);
    }

    private void Link(int from, int to)
    {
        corners[from].Next = to;
        corners[to].Before = from;
    }

    private void Drop(int from, int end)
    {
        for (int i = from; i != end; i = corners[i].Next)
        {
            corners[i].IsCut = true;
            Count--;
        }
    }

    private IEnumerable<int> Round()
    {
        int i = First;
        do
        {
            yield return i;
            i = corners[i].Next;
        } while (i != First);
    }

    private (int First, int Second, PlanePoint Place)? CrossingFrom(int from)
    {
        int i = from;
        do
        {
            if (Crossing(i) is { } crossing)
            {
                return crossing;
            }

            i = corners[i].Next;
        } while (i != First);

        return null;
    }

    /// <summary>The first later side that crosses one; numbers grow along the ring from its first corner on.</summary>
    private (int First, int Second, PlanePoint Place)? Crossing(int i)
    {
        var (a, b) = (corners[i].Place, corners[corners[i].Next].Place);
        (int First, int Second, PlanePoint Place)? found = null;
        foreach (var cell in CellsOf(a, b))
        {
            foreach (int j in cells.GetValueOrDefault(cell) ?? [])
            {
                if (corners[j].IsCut || j <= i || (found is { } best && j >= best.Second))
                {
                    continue;
                }

                var (c, d) = (corners[j].Place, corners[corners[j].Next].Place);
                bool neighbours = j == corners[i].Next || i == corners[j].Next;
                if (!Apart(a, b, c, d) && SideCrossing.Find(a, b, c, d, neighbours) is { } place)
                {
                    found = (i, j, place);
                }
            }
        }

        return found;
    }

    private static bool Apart(PlanePoint a, PlanePoint b, PlanePoint c, PlanePoint d) =>
        Math.Max(c.EastFeet, d.EastFeet) < Math.Min(a.EastFeet, b.EastFeet)
        || Math.Min(c.EastFeet, d.EastFeet) > Math.Max(a.EastFeet, b.EastFeet)
        || Math.Max(c.NorthFeet, d.NorthFeet) < Math.Min(a.NorthFeet, b.NorthFeet)
        || Math.Min(c.NorthFeet, d.NorthFeet) > Math.Max(a.NorthFeet, b.NorthFeet);

    private void Enter(int corner)
    {
        foreach (var cell in CellsOf(corners[corner].Place, corners[corners[corner].Next].Place))
        {
            if (!cells.TryGetValue(cell, out var list))
            {
                cells.Add(cell, list = []);
            }

            list.Add(corner);
        }
    }

    /// <summary>The cells that a side runs through: row by row, from its lowest to its highest place in each.</summary>
    private IEnumerable<(int Column, int Row)> CellsOf(PlanePoint a, PlanePoint b)
    {
        var (low, high) = a.NorthFeet <= b.NorthFeet ? (a, b) : (b, a);
        int lastRow = Cell(high.NorthFeet);
        for (int row = Cell(low.NorthFeet); row <= lastRow; row++)
        {
            var (from, to) = (low.EastFeet, high.EastFeet);
            if (high.NorthFeet > low.NorthFeet)
            {
                from = EastAt(Math.Max(low.NorthFeet, row * cellFeet));
                to = EastAt(Math.Min(high.NorthFeet, (row + 1) * cellFeet));
            }

            // A hair to either side, for what meets on the border of two cells.
            double hair = 1e-9 * cellFeet + Tolerance.Dust * Math.Abs(from);
            int lastColumn = Cell(Math.Max(from, to) + hair);
            for (int column = Cell(Math.Min(from, to) - hair); column <= lastColumn; column++)
            {
                yield return (column, row);
            }
        }

        double EastAt(double north) =>
            low.EastFeet + (north - low.NorthFeet) / (high.NorthFeet - low.NorthFeet) * (high.EastFeet - low.EastFeet);
    }

    private int Cell(double feet) => (int)Math.Floor(feet / cellFeet);
}
