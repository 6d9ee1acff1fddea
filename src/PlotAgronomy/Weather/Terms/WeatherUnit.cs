namespace PlotAgronomy.Weather;

/// <summary>Units in which weather is handed in, by the words of the service and of table headers.</summary>
internal static class WeatherUnit
{
    private const double MillimetersPerInch = 25.4;
    private const double KilometersPerMile = 1.609344;

    internal static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;

    internal static double Millimeters(double inches) => inches * MillimetersPerInch;

    internal static double MetersPerSecond(double milesPerHour) => milesPerHour * KilometersPerMile / 3.6;

    /// <summary>The unit code without the namespace before its colon.</summary>
    internal static string Bare(string code) => code[(code.LastIndexOf(':') + 1)..];

    internal static Func<double, double>? ToMillimeters(string unit) =>
        unit switch
        {
            "mm" or "kg.m-2" => x => x,
            "cm" => x => 10 * x,
            "m" => x => 1000 * x,
            "in" or "[in_i]" => Millimeters,
            _ => null,
        };

    internal static Func<double, double>? ToCelsius(string unit) =>
        unit switch
        {
            "degC" or "Cel" or "c" or "C" => x => x,
            "degF" or "[degF]" or "f" or "F" => Celsius,
            "K" => x => x - 273.15,
            _ => null,
        };

    internal static Func<double, double>? ToMetersPerSecond(string unit) =>
        unit switch
        {
            "km_h-1" or "km/h" or "kmh" => x => x / 3.6,
            "m_s-1" or "m/s" or "ms" => x => x,
            "mi_h-1" or "[mi_i]/h" or "mph" => MetersPerSecond,
            "kt" or "[kn_i]" => x => x * 1.852 / 3.6,
            _ => null,
        };

    internal static Func<double, double>? ToPercent(string unit) =>
        unit switch
        {
            "percent" or "%" or "pct" => x => x,
            "1" => x => 100 * x,
            _ => null,
        };
}
