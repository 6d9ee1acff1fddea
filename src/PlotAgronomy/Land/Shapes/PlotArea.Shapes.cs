using System.Globalization;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Land;

/// <content>Areas from measured lengths. Formulas of plane geometry.</content>
public sealed partial class PlotArea
{
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
            SourceIds = [],
            Work = [new("Area", "as stated", Amounts.Print(area, decimals: 4))],
        };
    }

    /// <summary>A rectangle.</summary>
    /// <param name="length">Above 0.</param>
    /// <param name="width">Above 0.</param>
    /// <returns>The area, with its outline.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A side is 0.</exception>
    /// <remarks>area = length x width.</remarks>
    public static PlotArea OfRectangle(MeasuredLength length, MeasuredLength width)
    {
        RequireAbove(length, nameof(length));
        RequireAbove(width, nameof(width));
        return FromSides(
            "length x width",
            $"{length} x {width}",
            length.Feet * width.Feet,
            [(length, width.Feet), (width, length.Feet)],
            PlotOutline.Rectangle(length.ToLength(), width.ToLength())
        );
    }

    /// <summary>A triangle from its base and height.</summary>
    /// <param name="baseSide">One side; above 0.</param>
    /// <param name="height">Distance of the far corner from that side's line; above 0.</param>
    /// <returns>The area, with an outline whose far corner stands over the middle of the base, and a finding that says so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is 0.</exception>
    /// <remarks>area = base x height / 2.</remarks>
    public static PlotArea OfTriangle(MeasuredLength baseSide, MeasuredLength height)
    {
        RequireAbove(baseSide, nameof(baseSide));
        RequireAbove(height, nameof(height));
        return FromSides(
            "base x height / 2",
            $"{baseSide} x {height} / 2",
            baseSide.Feet * height.Feet / 2,
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
    public static PlotArea OfThreeSides(MeasuredLength first, MeasuredLength second, MeasuredLength third)
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
            "root(s (s - a) (s - b) (s - c)), s = half of all sides",
            $"s = {Amounts.Print(Length.FromFeet((a + b + c) / 2), decimals: 2)}",
            area,
            [
                (first, a * (b * b + c * c - a * a) / (8 * area)),
                (second, b * (a * a + c * c - b * b) / (8 * area)),
                (third, c * (a * a + b * b - c * c) / (8 * area)),
            ],
            outline
        );
    }

    /// <summary>A trapezoid: two parallel sides and the distance between them.</summary>
    /// <param name="firstParallel">Above 0.</param>
    /// <param name="secondParallel">Above 0.</param>
    /// <param name="distance">Between the parallel sides; above 0.</param>
    /// <returns>The area, with an outline whose ends slant alike, and a finding that says so.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is 0.</exception>
    /// <remarks>area = (a + b) / 2 x distance.</remarks>
    public static PlotArea OfTrapezoid(MeasuredLength firstParallel, MeasuredLength secondParallel, MeasuredLength distance)
    {
        RequireAbove(firstParallel, nameof(firstParallel));
        RequireAbove(secondParallel, nameof(secondParallel));
        RequireAbove(distance, nameof(distance));
        double a = firstParallel.Feet,
            b = secondParallel.Feet,
            mean = (a + b) / 2;
        return FromSides(
            "(a + b) / 2 x distance",
            $"({firstParallel} + {secondParallel}) / 2 x {distance}",
            mean * distance.Feet,
            [(firstParallel, distance.Feet / 2), (secondParallel, distance.Feet / 2), (distance, mean)],
            PlotOutline.LikeEnded(
                "trapezoid",
                [new(0, 0), new(a, 0), new((a + b) / 2, distance.Feet), new((a - b) / 2, distance.Feet)]
            )
        );
    }

    /// <summary>A circle.</summary>
    /// <param name="radius">From the middle to the edge; above 0.</param>
    /// <returns>The area, with an outline of 72 straight sides that encloses the same area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius is 0.</exception>
    /// <remarks>area = pi x radius2. The outline's sides lie within 0.07 % of the radius from the circle.</remarks>
    public static PlotArea OfCircle(MeasuredLength radius)
    {
        RequireAbove(radius, nameof(radius));
        return FromSides(
            "pi x radius2",
            $"3.14159 x {radius} x {radius}",
            Math.PI * radius.Feet * radius.Feet,
            [(radius, 2 * Math.PI * radius.Feet)],
            RoundOutline(radius.Feet, radius.Feet)
        );
    }

    /// <summary>An ellipse.</summary>
    /// <param name="longHalf">From the middle to the far end; above 0.</param>
    /// <param name="shortHalf">From the middle to the near side; above 0.</param>
    /// <returns>The area, with an outline of 72 straight sides that encloses the same area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is 0.</exception>
    /// <remarks>area = pi x long half x short half.</remarks>
    public static PlotArea OfEllipse(MeasuredLength longHalf, MeasuredLength shortHalf)
    {
        RequireAbove(longHalf, nameof(longHalf));
        RequireAbove(shortHalf, nameof(shortHalf));
        return FromSides(
            "pi x long half x short half",
            $"3.14159 x {longHalf} x {shortHalf}",
            Math.PI * longHalf.Feet * shortHalf.Feet,
            [(longHalf, Math.PI * shortHalf.Feet), (shortHalf, Math.PI * longHalf.Feet)],
            RoundOutline(longHalf.Feet, shortHalf.Feet)
        );
    }

    /// <summary>A long curved plot from widths taken at even spacing along a straight line.</summary>
    /// <param name="spacing">Distance between the widths; above 0.</param>
    /// <param name="widths">Width at each station, both ends included; at least two; an end may be 0.</param>
    /// <param name="rule">How the edges run between the stations.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is 0.</exception>
    /// <exception cref="ArgumentException">Fewer than two widths, no width above 0, or an odd number of strips under <see cref="OffsetRule.SmoothEdges"/>.</exception>
    /// <remarks>Straight edges: spacing x (sum of widths, end ones halved). Smooth edges (Simpson): spacing / 3 x (1, 4, 2, ..., 4, 1).</remarks>
    public static PlotArea OfOffsets(
        MeasuredLength spacing,
        IReadOnlyList<MeasuredLength> widths,
        OffsetRule rule = OffsetRule.StraightEdges
    )
    {
        RequireAbove(spacing, nameof(spacing));
        ArgumentNullException.ThrowIfNull(widths);
        Guard.Defined(rule);
        if (widths.Count < 2 || widths.All(w => w.Feet == 0))
        {
            throw new ArgumentException("At least 2 widths are needed, one of them above 0 ft.", nameof(widths));
        }

        if (rule == OffsetRule.SmoothEdges && widths.Count % 2 == 0)
        {
            throw new ArgumentException(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Smooth edges need an even number of strips; {widths.Count} widths make {widths.Count - 1}."
                ),
                nameof(widths)
            );
        }

        double[] feet = [.. widths.Select(w => w.Feet)];
        double area =
            rule == OffsetRule.StraightEdges
                ? LandMath.StraightEdgedStripSquareFeet(spacing.Feet, feet)
                : LandMath.SmoothEdgedStripSquareFeet(spacing.Feet, feet);
        var slopes = widths.Select(
            (w, i) =>
                (
                    w,
                    Change: rule == OffsetRule.StraightEdges
                        ? spacing.Feet * (i == 0 || i == feet.Length - 1 ? 0.5 : 1)
                        : spacing.Feet
                            / 3
                            * (
                                i == 0 || i == feet.Length - 1 ? 1
                                : i % 2 == 1 ? 4
                                : 2
                            )
                )
        );
        string formula =
            rule == OffsetRule.StraightEdges
                ? "spacing x (sum of widths, end ones halved)"
                : "spacing / 3 x (1, 4, 2, ..., 4, 1)";
        return FromSides(
            formula,
            $"{spacing} and widths {string.Join(", ", widths)}",
            area,
            [(spacing, area / spacing.Feet), .. slopes]
        );
    }

    /// <summary>The area inside an outline.</summary>
    /// <param name="outline">Outline of the plot.</param>
    /// <param name="fixError">Error of each corner on each axis, one standard deviation; null when not known. A phone's is typically 3 to 15 m in the open (common practice).</param>
    /// <returns>The map area; see <see cref="OnSlope"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The error is negative, NaN or infinite.</exception>
    /// <remarks>area = half the sum of (x_i y_i+1 - x_i+1 y_i). Standard deviation to first order, corners erring
    /// independently: (error / 2) root(sum of |next corner - previous corner|2). Errors common to all fixes cancel.</remarks>
    public static PlotArea OfOutline(PlotOutline outline, Length? fixError = null)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var findings = new List<Finding>(outline.Findings);
        double? relative = null;
        if (fixError is { } error)
        {
            double errorFeet = error.Feet;
            relative =
                LandMath.AreaDeviationSquareFeet(outline.Corners.AsSpan(), Guard.AtLeast(errorFeet, 0, "ft", nameof(fixError)))
                / outline.SquareFeet;
            findings.Add(
                FindingCatalog.Create(
                    "land-fix-error",
                    ("error", Amounts.Print(error, "ft", 1)),
                    ("percent", $"{Amounts.Print(100 * relative.Value, 1)} %"),
                    (
                        "low",
                        Amounts.Print(Area.FromSquareFeet(outline.SquareFeet * Math.Max(0, 1 - relative.Value)), decimals: 3)
                    ),
                    ("high", Amounts.Print(Area.FromSquareFeet(outline.SquareFeet * (1 + relative.Value)), decimals: 3))
                )
            );
        }
        else if (outline.Origin is not null)
        {
            findings.Add(UnknownFixError(outline));
        }

        return new PlotArea
        {
            Area = outline.Area,
            Method = outline.Origin is null ? AreaMethod.MapOutline : AreaMethod.GeographicOutline,
            RelativeError = relative,
            Outline = outline,
            Findings = Finding.InOrder(findings),
            SourceIds = outline.Origin is null ? [] : ["SPREAD-S36"],
            Work =
            [
                new(
                    "Area",
                    "half the sum of (x_i y_i+1 - x_i+1 y_i) over the corners",
                    $"{outline.Corners.Length} corners = {Amounts.Print(outline.Area, "ft2", 0)} = {Amounts.Print(outline.Area, decimals: 4)}",
                    outline.Origin is null ? null : "SPREAD-S36"
                ),
            ],
        };
    }

    private static Finding UnknownFixError(PlotOutline outline)
    {
        double low = LandLimits.Of("phone-error-low-meters"),
            high = LandLimits.Of("phone-error-high-meters");
        string Percent(double meters) =>
            $"{Amounts.Print(100 * LandMath.AreaDeviationSquareFeet(outline.Corners.AsSpan(), meters / ExactUnits.MetersPerFoot) / outline.SquareFeet, 0)} %";
        return FindingCatalog.Create(
            "land-fix-error-unknown",
            ("low", Amounts.Print(low, 0)),
            ("high", Amounts.Print(high, 0)),
            ("lowpart", Percent(low)),
            ("highpart", Percent(high))
        );
    }

    private static PlotArea FromSides(
        string formula,
        string numbers,
        double squareFeet,
        IReadOnlyList<(MeasuredLength Side, double Change)> sides,
        PlotOutline? outline = null
    )
    {
        // An error shared by all sides adds up; errors of their own add in squares.
        double shared = sides.Sum(s => Math.Abs(s.Side.SharedRelativeError * s.Side.Feet * s.Change) * Math.Sign(s.Change));
        double own = sides.Sum(s => s.Side.OwnErrorFeet * s.Change * s.Side.OwnErrorFeet * s.Change);
        bool paced = sides.Any(s => s.Side.IsPaced);
        var area = Area.FromSquareFeet(squareFeet);
        double acres = area.Acres;
        Finding[] unusual =
            acres < LandLimits.Of("sides-low-acres") || acres > LandLimits.Of("sides-high-acres")
                ?
                [
                    FindingCatalog.Create(
                        "land-sides-repeat-unit",
                        ("area", Amounts.Print(area, decimals: 3)),
                        ("sides", string.Join(", ", sides.Select(s => s.Side.ToString()))),
                        ("yards", Amounts.Print(Area.FromSquareFeet(squareFeet * 9), decimals: 3)),
                        (
                            "meters",
                            Amounts.Print(
                                Area.FromSquareFeet(squareFeet / (ExactUnits.MetersPerFoot * ExactUnits.MetersPerFoot)),
                                decimals: 3
                            )
                        )
                    ),
                ]
                : [];
        return new PlotArea
        {
            Area = area,
            Method = paced ? AreaMethod.Paces : AreaMethod.Sides,
            RelativeError = sides.Any(s => s.Side.HasError) ? Math.Sqrt(shared * shared + own) / squareFeet : null,
            Outline = outline,
            Findings = Finding.InOrder([.. unusual, .. outline?.Findings.Where(f => f.Code == PlotOutline.AssumedCode) ?? []]),
            SourceIds = paced ? ["DEF-UNITS", "SPREAD-S38"] : ["DEF-UNITS"],
            Work = [new("Area", formula, $"{numbers} = {Amounts.Print(area, "ft2", 1)} = {Amounts.Print(area, decimals: 4)}")],
        };
    }

    /// <summary>An ellipse in straight sides that enclose its area, the long half to the east; sides square to the axes touch at the ends of them.</summary>
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
