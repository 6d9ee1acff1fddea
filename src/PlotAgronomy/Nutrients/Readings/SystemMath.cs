namespace PlotAgronomy.Nutrients;

/// <summary>The equations of the systems, in plain numbers. Rates are lb of oxide per acre and year.</summary>
internal static class SystemMath
{
    /// <summary>Raw value of a x I^2 - b x I + c.</summary>
    internal static double Parabola(double index, double a, double b, double c) => (a * index * index) - (b * index) + c;

    /// <summary>Index at which the parabola first reaches zero; infinity when it never does.</summary>
    internal static double FirstZero(double a, double b, double c)
    {
        double discriminant = (b * b) - (4 * a * c);
        return discriminant < 0 ? double.PositiveInfinity : 2 * c / (b + Math.Sqrt(discriminant));
    }

    /// <summary>The parabola as advice: zero at and beyond its first zero, where the printed equation turns up again,
    /// and above the limit of an equation that never reaches zero.</summary>
    internal static double FallingParabola(double index, double a, double b, double c, double zeroAboveIndex) =>
        index >= FirstZero(a, b, c) || index > zeroAboveIndex ? 0 : Math.Max(0, Parabola(index, a, b, c));

    /// <summary>(critical - test) x factor below the critical level, else 0.</summary>
    internal static double LinearBuildUp(double test, double criticalLevel, double poundsPerUnit) =>
        Math.Max(0, criticalLevel - test) * poundsPerUnit;

    /// <summary>factor x (sqrt(target) - sqrt(test)) / years below the target, else 0.</summary>
    internal static double SquareRootBuildUp(double test, double target, double factor, double years) =>
        test >= target ? 0 : factor * (Math.Sqrt(target) - Math.Sqrt(test)) / years;

    /// <summary>Share of the replacement still advised between the end of maintenance and the end of the taper: 1 to 0.</summary>
    internal static double TaperShare(double test, double taperStart, double taperEnd) =>
        test <= taperStart ? 1
        : test >= taperEnd ? 0
        : Interpolation.Line(taperStart, 1, taperEnd, 0, test);

    /// <summary>constant + perYield x yield + perTest x test + perBoth x yield x test, unclamped.</summary>
    internal static double Linear(double constant, double perYield, double perTest, double perBoth, double yield, double test) =>
        constant + (perYield * yield) + (perTest * test) + (perBoth * yield * test);

    /// <summary>Straight lines between printed points; the last point's rate above it.</summary>
    internal static double BetweenPoints(double test, ReadOnlySpan<(double Test, double Rate)> points) =>
        test >= points[^1].Test ? points[^1].Rate : Interpolation.Between(points, test);

    /// <summary>Nearest multiple of a step, a half away from zero: the rounding of printed tables.</summary>
    internal static double ToNearest(double value, double step) => Math.Round(value / step, MidpointRounding.AwayFromZero) * step;

    /// <summary>constant + per unit x test - per pH x pH.</summary>
    internal static double ManganeseIndex(double constant, double perUnit, double test, double perPh, double waterPh) =>
        constant + (perUnit * test) - (perPh * waterPh);
}
