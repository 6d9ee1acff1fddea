using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Land;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy;

/// <content>Areas from measured lengths. Formulas of plane geometry.</content>
public sealed partial class PlotArea
{
    private static string Pi => Amounts.Print(Math.PI, 5);

    /// <summary>A plot whose area someone states.</summary>
    /// <param name="area">Area; finite, above 0.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">0, negative, NaN or infinite.</exception>
    public static PlotArea Stated(Area area)
    {
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        return new PlotArea
        {
            Area = area,
            Method = AreaMethod.Stated,
            Lines = () => [LandFormulas.All["area-as-stated"].Line(Amounts.Print(area, decimals: 4))],
        };
    }

    /// <summary>A rectangle.</summary>
    /// <param name="length">Above 0.</param>
    /// <param name="width">Above 0.</param>
    /// <returns>The area, with its outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is 0.</exception>
    /// <remarks>area = length x width.</remarks>
    public static PlotArea FromRectangle(MeasuredLength length, MeasuredLength width)
    {
        RequireAbove(length, nameof(length));
        RequireAbove(width, nameof(width));
        return FromSides(
            "area-of-rectangle",
            () => [("length", length.ToString()), ("width", width.ToString())],
            LandMath.RectangleSquareFeet(length.Feet, width.Feet),
            [(length, width.Feet), (width, length.Feet)],
            PlotOutline.Rectangle(length.ToLength(), width.ToLength()),
            (PlotForm.Rectangle, [length, width])
        );
    }

    /// <summary>A triangle from its base and height.</summary>
    /// <param name="baseSide">One side; above 0.</param>
    /// <param name="height">Distance of the far corner from that side's line; above 0.</param>
    /// <returns>The area, with an outline whose far corner stands over the middle of
    /// the base, and a finding that says so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is 0.</exception>
    /// <remarks>area = base x height / 2.</remarks>
    public static PlotArea FromTriangle(MeasuredLength baseSide, MeasuredLength height)
    {
        RequireAbove(baseSide, nameof(baseSide));
        RequireAbove(height, nameof(height));
        return FromSides(
            "area-of-triangle",
            () => [("base", baseSide.ToString()), ("height", height.ToString())],
            LandMath.TriangleSquareFeet(baseSide.Feet, height.Feet),
            [(baseSide, height.Feet / 2), (height, baseSide.Feet / 2)],
            PlotOutline.LikeEnded("triangle", [new(0, 0), new(baseSide.Feet, 0), new(baseSide.Feet / 2, height.Feet)])
        );
    }

    /// <summary>A triangle from its three sides.</summary>
    /// <param name="first">Above 0.</param>
    /// <param name="second">Above 0.</param>
    /// <param name="third">Above 0, and shorter than the other two together.</param>
    /// <returns>The area, with its outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is 0.</exception>
    /// <exception cref="ArgumentException">The longest side is not shorter than the other two together.</exception>
    /// <remarks>Heron: s = (a + b + c) / 2; area = root(s (s - a) (s - b) (s - c)).</remarks>
    public static PlotArea FromThreeSides(MeasuredLength first, MeasuredLength second, MeasuredLength third)
    {
        RequireAbove(first, nameof(first));
        RequireAbove(second, nameof(second));
        RequireAbove(third, nameof(third));
        double a = first.Feet,
            b = second.Feet,
            c = third.Feet;
        if (2 * Math.Max(a, Math.Max(b, c)) >= a + b + c)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Sides of {a}, {b} and {c} ft do not close: the longest must be shorter than the other two together."
                ),
                nameof(third)
            );
        }

        double area = LandMath.TriangleSquareFeet(a, b, c);
        double eastFeet = (a * a + c * c - b * b) / (2 * a);
        var outline = PlotOutline.FromCorners([new(0, 0), new(a, 0), new(eastFeet, 2 * area / a)]);
        return FromSides(
            "area-of-three-sides",
            () => [("first", first.ToString()), ("second", second.ToString()), ("third", third.ToString())],
            area,
            [
                (first, a * (b * b + c * c - a * a) / (8 * area)),
                (second, b * (a * a + c * c - b * b) / (8 * area)),
                (third, c * (a * a + b * b - c * c) / (8 * area)),
            ],
            outline,
            (PlotForm.Triangle, [first, second, third])
        );
    }

    /// <summary>A trapezoid: two parallel sides and the distance between them.</summary>
    /// <param name="firstParallel">Above 0.</param>
    /// <param name="secondParallel">Above 0.</param>
    /// <param name="distance">Between the parallel sides; above 0.</param>
    /// <returns>The area, with an outline whose ends slant alike, and a finding that says so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is 0.</exception>
    /// <remarks>area = (a + b) / 2 x distance.</remarks>
    public static PlotArea FromTrapezoid(MeasuredLength firstParallel, MeasuredLength secondParallel, MeasuredLength distance)
    {
        RequireAbove(firstParallel, nameof(firstParallel));
        RequireAbove(secondParallel, nameof(secondParallel));
        RequireAbove(distance, nameof(distance));
        double a = firstParallel.Feet,
            b = secondParallel.Feet,
            mean = (a + b) / 2;
        return FromSides(
            "area-of-trapezoid",
            () => [("a", firstParallel.ToString()), ("b", secondParallel.ToString()), ("distance", distance.ToString())],
            LandMath.TrapezoidSquareFeet(a, b, distance.Feet),
            [(firstParallel, distance.Feet / 2), (secondParallel, distance.Feet / 2), (distance, mean)],
            PlotOutline.LikeEnded(
                "trapezoid",
                [new(0, 0), new(a, 0), new((a + b) / 2, distance.Feet), new((a - b) / 2, distance.Feet)]
            ),
            (PlotForm.Trapezoid, [firstParallel, secondParallel, distance])
        );
    }

    /// <summary>A circle.</summary>
    /// <param name="radius">From the middle to the edge; above 0.</param>
    /// <returns>The area, with an outline of 72 straight sides that encloses the same area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius is 0.</exception>
    /// <remarks>area = pi x radius2. The outline's sides lie within 0.07 % of the radius from the circle.</remarks>
    public static PlotArea FromCircle(MeasuredLength radius)
    {
        RequireAbove(radius, nameof(radius));
        return FromSides(
            "area-of-circle",
            () => [("pi", Pi), ("radius", radius.ToString())],
            LandMath.EllipseSquareFeet(radius.Feet, radius.Feet),
            [(radius, 2 * Math.PI * radius.Feet)],
            RoundOutline(radius.Feet, radius.Feet),
            (PlotForm.Circle, [radius])
        );
    }

    /// <summary>An ellipse.</summary>
    /// <param name="longHalf">From the middle to the far end; above 0.</param>
    /// <param name="shortHalf">From the middle to the near side; above 0.</param>
    /// <returns>The area, with an outline of 72 straight sides that encloses the same area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is 0.</exception>
    /// <remarks>area = pi x long half x short half.</remarks>
    public static PlotArea FromEllipse(MeasuredLength longHalf, MeasuredLength shortHalf)
    {
        RequireAbove(longHalf, nameof(longHalf));
        RequireAbove(shortHalf, nameof(shortHalf));
        return FromSides(
            "area-of-ellipse",
            () => [("pi", Pi), ("long half", longHalf.ToString()), ("short half", shortHalf.ToString())],
            LandMath.EllipseSquareFeet(longHalf.Feet, shortHalf.Feet),
            [(longHalf, Math.PI * shortHalf.Feet), (shortHalf, Math.PI * longHalf.Feet)],
            RoundOutline(longHalf.Feet, shortHalf.Feet)
        );
    }

    private static PlotArea FromSides(
        string formulaId,
        Func<(string Place, string Value)[]> values,
        double squareFeet,
        IReadOnlyList<(MeasuredLength Side, double Change)> sides,
        PlotOutline? outline = null,
        (PlotForm, ImmutableArray<MeasuredLength>)? form = null
    ) => FromChanges(squareFeet, sides, outline, form, () =>
        {
            var area = Area.FromSquareFeet(squareFeet);
            return
            [
                LandFormulas
                    .All[formulaId]
                    .Line($"{Amounts.Print(area, "ft2", 1)} = {Amounts.Print(area, decimals: 4)}", values()),
            ];
        });

    private static PlotArea FromChanges(
        double squareFeet,
        IReadOnlyList<(MeasuredLength Side, double Change)> sides,
        PlotOutline? outline,
        (PlotForm, ImmutableArray<MeasuredLength>)? form,
        Func<IEnumerable<WorkedLine>> shape
    )
    {
        // An error shared by all sides adds up; errors of their own add in squares.
        double shared = sides.Sum(s => Math.Abs(s.Side.SharedRelativeError * s.Side.Feet * s.Change) * Math.Sign(s.Change));
        double own = sides.Sum(s => s.Side.OwnErrorFeet * s.Change * s.Side.OwnErrorFeet * s.Change);
        bool paced = sides.Any(s => s.Side.IsPaced);
        var area = Area.FromSquareFeet(squareFeet);
        return new PlotArea
        {
            Area = area,
            Method = paced ? AreaMethod.Paces : AreaMethod.Sides,
            RelativeError = sides.Any(s => s.Side.HasError) ? Math.Sqrt(shared * shared + own) / squareFeet : null,
            Outline = outline,
            Sides = form,
            Changes = sides,
            ShapeLines = shape,
            Remarks = () => Unusual(area, squareFeet, sides).Concat(OutlineRemarks.OfShape(outline?.AssumedShape)),
            Lines = () => [.. PacedLines(sides), .. shape()],
        };
    }

    private static WorkedLine AddedUp(double[] added, double[] takenOff)
    {
        var left = Area.FromSquareFeet(LandMath.PiecesSquareFeet(added.Sum(), takenOff.Sum()));
        return LandFormulas
            .All["area-of-pieces"]
            .Line(
                $"{Amounts.Print(left, "ft2", 1)} = {Amounts.Print(left, decimals: 4)}",
                ("added", Total(added)),
                ("taken off", Total(takenOff))
            );
    }

    private static string Total(double[] squareFeet)
    {
        string sum = string.Join(" + ", squareFeet.DefaultIfEmpty().Select(a => Amounts.Print(a, 1)));
        return squareFeet.Length > 1 ? $"({sum})" : sum;
    }

    private static IEnumerable<WorkedLine> PacedLines(IReadOnlyList<(MeasuredLength Side, double Change)> sides)
    {
        foreach (var (side, _) in sides)
        {
            if (side.Walked is { } walked)
            {
                yield return LandFormulas
                    .All["paced-length"]
                    .Line(
                        side.ToString(),
                        ("steps", Amounts.Print(walked.Steps, 1)),
                        ("step", Amounts.Print(Length.FromFeet(walked.StepFeet), decimals: 3))
                    );
            }
        }
    }

    /// <summary>An area that a wrong unit would explain.</summary>
    private static IEnumerable<Finding> Unusual(
        Area area,
        double squareFeet,
        IReadOnlyList<(MeasuredLength Side, double Change)> sides
    )
    {
        double acres = area.Acres;
        if (acres < LandConstants.All["sides-low-acres"] || acres > LandConstants.All["sides-high-acres"])
        {
            var inYards = Area.FromSquareFeet(squareFeet * 9);
            var inMeters = Area.FromSquareFeet(squareFeet / (ExactUnits.MetersPerFoot * ExactUnits.MetersPerFoot));
            yield return FindingCatalog.Create(
                LandCodes.SidesRepeatUnit,
                ("area", Amounts.Print(area, decimals: 3)),
                ("sides", string.Join(", ", sides.Select(s => s.Side.ToString()))),
                ("yards", Amounts.Print(inYards, decimals: 3)),
                ("meters", Amounts.Print(inMeters, decimals: 3))
            );
        }
    }

    /// <summary>An ellipse in straight sides that enclose its area, the long half to the east; sides square to the axes touch
    /// at the ends of them.</summary>
    private static PlotOutline RoundOutline(double eastHalfFeet, double northHalfFeet)
    {
        const int Sides = 72;
        double step = 2 * Math.PI / Sides,
            reach = Math.Sqrt(step / Math.Sin(step));
        return PlotOutline.FromCorners([
            .. Enumerable
                .Range(0, Sides)
                .Select(i => (i - 0.5) * step)
                .Select(angle => new PlanePoint(reach * eastHalfFeet * Math.Cos(angle), reach * northHalfFeet * Math.Sin(angle))),
        ]);
    }

    private static void RequireAbove(MeasuredLength length, string name) => Guard.Above(length.Feet, 0, "ft", name);
}
