using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Weather;

/// <summary>What to be careful about in the rain of a window.</summary>
internal static class RainRemarks
{
    internal static ImmutableArray<Finding> Of(ImmutableArray<Finding> ofForecast, bool isHeavy, double heaviestRate)
    {
        var remarks = ofForecast.ToList();
        if (isHeavy)
        {
            remarks.Add(
                FindingCatalog.Create(
                    WeatherCodes.WashOff,
                    ("rate", PerHour(heaviestRate)),
                    ("tested", PerHour(WeatherConstants.All["wash-off-rate"])),
                    ("light", $"{Amounts.Print(WeatherConstants.All["wash-off-below"], 0)} mg")
                )
            );
        }

        return Finding.InOrder(remarks);
    }

    /// <summary>As inches in an hour, of millimeters in one.</summary>
    private static string PerHour(double millimeters) => $"{Amounts.Print(Length.FromMillimeters(millimeters), "in", 2)} an hour";
}
