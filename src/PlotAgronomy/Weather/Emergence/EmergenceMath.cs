namespace PlotAgronomy.Weather;

/// <summary>Thermal time as doubles: temperatures in C, thermal time in C days.</summary>
internal static class EmergenceMath
{
    internal static double Rising(double temperature, double @base) => temperature - @base;

    /// <summary>Above the best temperature the rate falls in a straight line to nothing.</summary>
    internal static double Falling(double best, double @base, double highest, double temperature) =>
        (best - @base) * (highest - temperature) / (highest - best);

    internal static double DaysNeeded(double thermalTime, double temperature, double @base) =>
        thermalTime / (temperature - @base);

    internal static double ThermalTimeAtDepth(double atSurface, double perMillimeter, double depth) =>
        atSurface + (perMillimeter * depth);

    /// <summary>What one moist day adds; where no best temperature is known the rate goes on rising.</summary>
    internal static double OfDay(double temperature, double @base, double? best, double? highest) =>
        temperature <= @base ? 0
        : best is not { } b || temperature <= b ? Rising(temperature, @base)
        : highest is { } h ? Math.Max(0, Falling(b, @base, h, temperature))
        : Rising(b, @base);
}
