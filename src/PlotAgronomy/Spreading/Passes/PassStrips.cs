namespace PlotAgronomy.Spreading;

/// <summary>The evenly spaced strips of one direction, from the lowest up.</summary>
internal static class PassStrips
{
    internal static int Count(double widthFeet, double swathFeet) =>
        Math.Max(1, (int)Tolerance.Ceiling(SpreaderMath.SwathsAcross(widthFeet, swathFeet)));

    /// <summary>Counts and measures the passes in one direction without laying them.</summary>
    internal static PassDirection Measure(StripSpans spans, double alongDegrees, bool isAlongSide, double swathFeet, bool onEdge)
    {
        int passes = 0;
        double length = 0;
        double spacing = Through(spans, alongDegrees, swathFeet, onEdge, (_, stretches) =>
        {
            passes += stretches.Count;
            foreach (var (from, to) in stretches)
            {
                length += to - from;
            }
        });
        return new PassDirection(alongDegrees, isAlongSide, passes, spacing, length);
    }

    /// <summary>Goes through the strips of one direction from the lowest up, with the stretches of each.</summary>
    /// <returns>The spacing in feet.</returns>
    internal static double Through(
        StripSpans spans,
        double alongDegrees,
        double swathFeet,
        bool onEdge,
        Action<double, List<(double From, double To)>> strip
    )
    {
        spans.Turn(alongDegrees);
        spans.StartBelow();
        double widthFeet = spans.HighFeet - spans.LowFeet;
        int intervals = Count(widthFeet, swathFeet);
        int strips = onEdge ? intervals + 1 : intervals;
        double spacing = onEdge ? SpreaderMath.SpacingOnEdgeFeet(widthFeet, strips) : SpreaderMath.SpacingFeet(widthFeet, strips);
        for (int i = 0; i < strips; i++)
        {
            double middle = spans.LowFeet + (onEdge ? i : i + 0.5) * spacing;
            // The outer strips reach past the plot by arithmetic dust only.
            double from = i == 0 ? spans.LowFeet : middle - spacing / 2,
                to = i == strips - 1 ? spans.HighFeet : middle + spacing / 2;
            strip(middle, spans.Between(from, to, swathFeet));
        }

        return spacing;
    }
}
