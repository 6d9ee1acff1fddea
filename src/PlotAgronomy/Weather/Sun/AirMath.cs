namespace PlotAgronomy.Weather;

/// <summary>The air's part of FAO-56: temperatures in C, pressures in kPa, wind in m/s, radiation in MJ/m2 and water in mm, a
/// day.</summary>
internal static class AirMath
{
    private const double Kelvin = 273.16;

    internal static double SaturationPressure(double scale, double slope, double offset, double temperature) =>
        scale * Math.Exp(slope * temperature / (temperature + offset));

    internal static double SaturationPressure(double temperature) =>
        SaturationPressure(
            WeatherConstants.All["vapour-scale"],
            WeatherConstants.All["vapour-slope"],
            WeatherConstants.All["vapour-offset"],
            temperature
        );

    internal static double SlopeOfPressure(double factor, double pressure, double temperature, double offset) =>
        factor * pressure / Math.Pow(temperature + offset, 2);

    internal static double Pressure(double elevation) => 101.3 * Math.Pow((293 - (0.0065 * elevation)) / 293, 5.26);

    internal static double PsychrometricConstant(double factor, double pressure) => factor * pressure;

    internal static double MeanSaturation(double ofHigh, double ofLow) => (ofHigh + ofLow) / 2;

    internal static double VapourFromExtremes(double ofLow, double ofHigh, double highestHumidity, double lowestHumidity) =>
        ((ofLow * highestHumidity / 100) + (ofHigh * lowestHumidity / 100)) / 2;

    internal static double VapourFromMean(double meanHumidity, double meanSaturation) => meanHumidity / 100 * meanSaturation;

    internal static double VapourFromPsychrometer(double ofWetBulb, double factor, double pressure, double dry, double wet) =>
        ofWetBulb - (factor * pressure * (dry - wet));

    internal static double WindAtTwoMeters(double wind, double height) => wind * 4.87 / Math.Log((67.8 * height) - 5.42);

    internal static double NetShortwave(double albedo, double solar) => (1 - albedo) * solar;

    internal static double NetLongwave(double sigma, double high, double low, double vapour, double relativeSolar) =>
        sigma
        * (Math.Pow(high + Kelvin, 4) + Math.Pow(low + Kelvin, 4))
        / 2
        * (0.34 - (0.14 * Math.Sqrt(vapour)))
        * ((1.35 * relativeSolar) - 0.35);

    internal static double HeatIntoSoilOfMonth(double factor, double next, double previous) => factor * (next - previous);

    internal static double PenmanMonteith(
        double slope,
        double netRadiation,
        double heatIntoSoil,
        double psychrometric,
        double temperature,
        double wind,
        double deficit
    ) =>
        ((0.408 * slope * (netRadiation - heatIntoSoil)) + (psychrometric * 900 / (temperature + 273) * wind * deficit))
        / (slope + (psychrometric * (1 + (0.34 * wind))));

    internal static double Hargreaves(double factor, double mean, double shift, double high, double low, double depth) =>
        factor * (mean + shift) * Math.Sqrt(high - low) * depth;
}
