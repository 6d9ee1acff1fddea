namespace PlotAgronomy.Weather;

/// <summary>Degree days of one day, in the unit of its temperatures.</summary>
internal static class DegreeDayMath
{
    internal static double Simple(double high, double low, double @base) => Math.Max(((high + low) / 2) - @base, 0);

    internal static double Clipped(double high, double low, double @base, double upper) =>
        ((Math.Min(Math.Max(high, @base), upper) + Math.Min(Math.Max(low, @base), upper)) / 2) - @base;

    /// <summary>The sine above its base, where the base lies between low and high.</summary>
    internal static double SineAbove(double mean, double @base, double halfPi, double angle, double swing, double cosine) =>
        (((mean - @base) * (halfPi - angle)) + (swing * cosine)) / (2 * halfPi);

    internal static double SingleSine(double high, double low, double @base)
    {
        double mean = (high + low) / 2;
        if (low >= @base)
        {
            return mean - @base;
        }

        if (high <= @base)
        {
            return 0;
        }

        double swing = (high - low) / 2;
        double angle = Math.Asin((@base - mean) / swing);
        return SineAbove(mean, @base, Math.PI / 2, angle, swing, Math.Cos(angle));
    }

    /// <summary>With a level cut at an upper limit.</summary>
    internal static double SingleSine(double high, double low, double @base, double upper) =>
        Cut(SingleSine(high, low, @base), SingleSine(high, low, upper));

    internal static double Cut(double aboveBase, double aboveLimit) => aboveBase - aboveLimit;

    internal static double OfDay(DegreeDayMethod method, double high, double low, double @base, double? upper) =>
        method switch
        {
            DegreeDayMethod.SimpleAverage => Simple(high, low, @base),
            DegreeDayMethod.Clipped => Clipped(high, low, @base, upper ?? double.PositiveInfinity),
            _ => upper is { } limit ? SingleSine(high, low, @base, limit) : SingleSine(high, low, @base),
        };
}
