using PlotAgronomy.Land;

namespace PlotAgronomy;

/// <content>Plots of any number of sides.</content>
public sealed partial class PlotArea
{
    /// <summary>A plot of any number of sides, cut into triangles by the diagonals from its first corner.</summary>
    /// <param name="sides">At least 3, in order round the plot; side 1 leads from corner 1 to corner 2.</param>
    /// <param name="diagonals">From corner 1 to corners 3, 4 and so on: three fewer than there are sides. Begin at a corner from
    /// which every other can be seen.</param>
    /// <returns>The area, with its outline.</returns>
    /// <exception cref="ArgumentException">Too few sides, a wrong number of diagonals, a length of 0, or a triangle that does not
    /// close; the message names its three lengths.</exception>
    /// <remarks>Heron's area of each triangle, added up. Lengths paced with one pace err together.</remarks>
    public static PlotArea FromSidesAndDiagonals(
        IReadOnlyList<MeasuredLength> sides,
        params IReadOnlyList<MeasuredLength> diagonals
    )
    {
        ArgumentNullException.ThrowIfNull(sides);
        ArgumentNullException.ThrowIfNull(diagonals);
        const int Fewest = 3;
        if (sides.Count < Fewest || diagonals.Count != sides.Count - Fewest)
        {
            int wanted = Math.Max(0, sides.Count - Fewest);
            throw new ArgumentException(
                sides.Count < Fewest
                    ? "At least 3 sides are needed."
                    : $"{Amounts.Print(sides.Count, 0)} sides need {Amounts.PrintCount(wanted, "diagonal")} from corner 1, to "
                        + $"corner 3 and on; found {Amounts.Print(diagonals.Count, 0)}.",
                nameof(diagonals)
            );
        }

        foreach (var side in sides)
        {
            RequireAbove(side, nameof(sides));
        }

        foreach (var diagonal in diagonals)
        {
            RequireAbove(diagonal, nameof(diagonals));
        }

        var triangles = new DiagonalTriangles([.. sides], [.. diagonals]);
        if (triangles.Open.FirstOrDefault() is { } open)
        {
            throw new ArgumentException($"The {open.Question}", nameof(diagonals));
        }

        var corners = triangles.Corners
            ?? throw new ArgumentException(
                "The triangles go round corner 1 more than once: begin at a corner from which every other can be seen.",
                nameof(diagonals)
            );
        return FromChanges(
            triangles.SquareFeet,
            triangles.Changes,
            PlotOutline.FromCorners(corners),
            (PlotForm.SidesAndDiagonals, [.. sides, .. diagonals]),
            () =>
                [
                    .. Enumerable
                        .Range(0, triangles.Count)
                        .Select(i => triangles[i])
                        .Select(t =>
                            LandFormulas
                                .All["area-of-three-sides"]
                                .Line(
                                    Amounts.Print(UnitsNet.Area.FromSquareFeet(t.SquareFeet), "ft2", 1),
                                    ("first", t.First.ToString()),
                                    ("second", t.Second.ToString()),
                                    ("third", t.Third.ToString())
                                )
                        ),
                    AddedUp([.. Enumerable.Range(0, triangles.Count).Select(i => triangles[i].SquareFeet)], []),
                ]
        );
    }

    /// <summary>A rectangle with a smaller rectangle missing from one corner.</summary>
    /// <param name="length">Whole length; above 0.</param>
    /// <param name="width">Whole width; above 0.</param>
    /// <param name="missingLength">What is missing along the length; above 0, less than the length.</param>
    /// <param name="missingWidth">What is missing along the width; above 0, less than the width.</param>
    /// <returns>The area, with its outline.</returns>
    /// <exception cref="ArgumentException">A length is 0, or more is missing than there is.</exception>
    /// <remarks>area = length x width - missing length x missing width.</remarks>
    public static PlotArea FromLShape(
        MeasuredLength length,
        MeasuredLength width,
        MeasuredLength missingLength,
        MeasuredLength missingWidth
    )
    {
        RequireAbove(missingLength, nameof(missingLength));
        RequireAbove(missingWidth, nameof(missingWidth));
        double l = length.Feet,
            w = width.Feet,
            missing = missingLength.Feet,
            deep = missingWidth.Feet;
        if (missing >= l || deep >= w)
        {
            throw new ArgumentException(
                $"What is missing of an L ({missingLength} by {missingWidth}) is less than the whole ({length} by {width}).",
                nameof(missingLength)
            );
        }

        return FromSides(
            "area-of-l-shape",
            () =>
                [
                    ("length", length.ToString()),
                    ("width", width.ToString()),
                    ("missing length", missingLength.ToString()),
                    ("missing width", missingWidth.ToString()),
                ],
            LandMath.LShapeSquareFeet(l, w, missing, deep),
            [(length, w), (width, l), (missingLength, -deep), (missingWidth, -missing)],
            PlotOutline.FromCorners([
                new(0, 0),
                new(l, 0),
                new(l, w - deep),
                new(l - missing, w - deep),
                new(l - missing, w),
                new(0, w),
            ]),
            (PlotForm.LShape, [length, width, missingLength, missingWidth])
        );
    }
}
