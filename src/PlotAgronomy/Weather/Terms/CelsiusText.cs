using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>Temperatures as an American owner reads them.</summary>
internal static class CelsiusText
{
    internal static string Of(Temperature temperature)
    {
        double fahrenheit = temperature.DegreesFahrenheit;
        return $"{Amounts.Print(fahrenheit, 1)} F";
    }

    internal static string OfCelsius(double celsius) => $"{Amounts.Print((celsius * 1.8) + 32, 1)} F";
}
