using System.Globalization;
using PlotAgronomy.Land;

namespace PlotAgronomy;

/// <content>Areas from widths along a line.</content>
public sealed partial class PlotArea
{
    /// <summary>A long curved plot from widths taken at even spacing along a straight line.</summary>
    /// <param name="spacing">Distance between the widths; above 0.</param>
    /// <param name="widths">Width at each station, both ends included; at least two; an end may be 0.</param>
    /// <param name="rule">How the edges run between the stations.</param>
    /// <returns>The area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The spacing is 0.</exception>
    /// <exception cref="ArgumentException">Fewer than two widths, no width above 0, or an odd number of strips under
    /// <see cref="OffsetRule.SmoothEdges"/>.</exception>
    /// <remarks>Straight edges: spacing x (sum of widths, end ones halved). Smooth edges (Simpson):
    /// spacing / 3 x (1, 4, 2, ..., 4, 1).</remarks>
    public static PlotArea FromOffsets(
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

        MeasuredLength[] kept = [.. widths];
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
        return FromSides(
            rule == OffsetRule.StraightEdges ? "area-of-straight-edges" : "area-of-smooth-edges",
            () => OffsetPlaces(spacing, kept),
            area,
            [(spacing, area / spacing.Feet), .. slopes]
        );
    }

    private static (string Place, string Value)[] OffsetPlaces(MeasuredLength spacing, MeasuredLength[] widths)
    {
        var inner = widths[1..^1];
        return
        [
            ("spacing", spacing.ToString()),
            ("end widths", Sum([widths[0], widths[^1]])),
            ("other widths", Sum(inner)),
            ("every second width", Sum(inner.Where((_, i) => i % 2 == 0))),
            ("widths between", Sum(inner.Where((_, i) => i % 2 == 1))),
        ];
    }

    /// <summary>Widths as a part of a sum.</summary>
    private static string Sum(IEnumerable<MeasuredLength> widths)
    {
        MeasuredLength[] all = [.. widths.DefaultIfEmpty()];
        string sum = string.Join(" + ", all);
        return all.Length == 1 ? sum : $"({sum})";
    }
}
