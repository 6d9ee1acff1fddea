namespace PlotAgronomy.Reference;

/// <summary>Straight lines between points.</summary>
internal static class Interpolation
{
    /// <summary>Value at x of the line through two points; x may lie outside them.</summary>
    internal static double Line(double x0, double y0, double x1, double y1, double x) => y0 + ((y1 - y0) * (x - x0) / (x1 - x0));

    /// <summary>Value at x of the straight lines through points of rising x.</summary>
    /// <exception cref="ArgumentOutOfRangeException">x lies outside the points.</exception>
    internal static double Between(ReadOnlySpan<(double X, double Y)> points, double x)
    {
        if (!(x >= points[0].X && x <= points[^1].X))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "Outside the points.");
        }

        int above = 1;
        while (above < points.Length - 1 && points[above].X < x)
        {
            above++;
        }

        return Line(points[above - 1].X, points[above - 1].Y, points[above].X, points[above].Y, x);
    }
}
