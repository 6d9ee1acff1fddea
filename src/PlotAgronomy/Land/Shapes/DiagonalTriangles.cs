using System.Collections.Immutable;

namespace PlotAgronomy.Land;

/// <summary>A plot cut into triangles by the diagonals from its first corner: side 1 leads from corner 1 to corner 2, and the
/// last side back to corner 1.</summary>
internal sealed class DiagonalTriangles
{
    private readonly ImmutableArray<MeasuredLength> sides;

    /// <summary>From corner 1 to corners 2, 3 and so on: the first side, the diagonals, the last side.</summary>
    private readonly ImmutableArray<MeasuredLength> spokes;

    /// <param name="sides">At least 3 sides in order.</param>
    /// <param name="diagonals">From corner 1 to corners 3, 4 and so on: three fewer than sides.</param>
    internal DiagonalTriangles(ImmutableArray<MeasuredLength> sides, ImmutableArray<MeasuredLength> diagonals)
    {
        this.sides = sides;
        spokes = [sides[0], .. diagonals, sides[^1]];
    }

    internal int Count => spokes.Length - 1;

    internal double SquareFeet => Enumerable.Range(0, Count).Sum(AreaOf);

    /// <summary>The triangles that do not close, each with the length to look at first.</summary>
    internal IEnumerable<OpenTriangle> Open
    {
        get
        {
            for (int i = 0; i < Count; i++)
            {
                if (!Closes(i))
                {
                    // A diagonal that leaves both of its triangles open is the likeliest slip.
                    bool isNextToo = i + 1 < Count && !Closes(i + 1);
                    yield return new OpenTriangle(
                        Count == 1 ? null
                            : isNextToo || i == 0 ? i
                            : i - 1,
                        Question(i)
                    );
                }
            }
        }
    }

    /// <summary>What changes the area by how much a foot, each length once.</summary>
    internal IReadOnlyList<(MeasuredLength Side, double Change)> Changes
    {
        get
        {
            double[] ofSpokes = new double[spokes.Length];
            var changes = new List<(MeasuredLength, double)>();
            for (int i = 0; i < Count; i++)
            {
                double a = spokes[i].Feet,
                    b = sides[i + 1].Feet,
                    c = spokes[i + 1].Feet,
                    area = AreaOf(i);
                ofSpokes[i] += LandMath.TriangleAreaPerFoot(a, b, c, area);
                ofSpokes[i + 1] += LandMath.TriangleAreaPerFoot(c, a, b, area);
                changes.Add((sides[i + 1], LandMath.TriangleAreaPerFoot(b, a, c, area)));
            }

            return [.. spokes.Zip(ofSpokes), .. changes];
        }
    }

    /// <summary>The three lengths of a triangle and its area.</summary>
    internal (MeasuredLength First, MeasuredLength Second, MeasuredLength Third, double SquareFeet) this[int triangle] =>
        (spokes[triangle], sides[triangle + 1], spokes[triangle + 1], AreaOf(triangle));

    /// <summary>The corners, corner 1 at zero and the first side to the east; null when they go round more than once.</summary>
    internal ImmutableArray<PlanePoint>? Corners
    {
        get
        {
            var corners = ImmutableArray.CreateBuilder<PlanePoint>();
            corners.Add(new(0, 0));
            double angle = 0;
            for (int i = 0; i < spokes.Length; i++)
            {
                double reach = spokes[i].Feet;
                corners.Add(new(reach * Math.Cos(angle), reach * Math.Sin(angle)));
                angle += i < Count ? LandMath.AngleBetween(reach, spokes[i + 1].Feet, sides[i + 1].Feet) : 0;
            }

            return angle < 2 * Math.PI ? corners.ToImmutable() : null;
        }
    }

    private double AreaOf(int i) => LandMath.TriangleSquareFeet(spokes[i].Feet, sides[i + 1].Feet, spokes[i + 1].Feet);

    private bool Closes(int i)
    {
        double a = spokes[i].Feet,
            b = sides[i + 1].Feet,
            c = spokes[i + 1].Feet;
        return 2 * Math.Max(a, Math.Max(b, c)) < a + b + c;
    }

    private string Question(int i)
    {
        string[] lengths =
        [
            $"{Spoke(i)} of {spokes[i].InOwnUnit}",
            $"side {Number(i + 2)} of {sides[i + 1].InOwnUnit}",
            $"{Spoke(i + 1)} of {spokes[i + 1].InOwnUnit}",
        ];
        return $"corners 1, {Number(i + 2)} and {Number(i + 3)} do not close: {string.Join(", ", lengths)}; the longest must be "
            + "shorter than the other two together. Which of the three is wrong?";
    }

    private string Spoke(int i) =>
        i == 0 ? "side 1"
        : i == Count ? $"side {Number(sides.Length)}"
        : $"the diagonal to corner {Number(i + 2)}";

    private static string Number(int number) => Amounts.Print(number, 0);
}

/// <summary>A triangle that does not close.</summary>
/// <param name="Diagonal">Index of the diagonal to look at first; null where there is none.</param>
/// <param name="Question">What to measure again.</param>
internal sealed record OpenTriangle(int? Diagonal, string Question);
