using System.Collections.Immutable;
using PlotAgronomy.Reference;

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
                    ("rate", $"{Amounts.Print(heaviestRate, 1)} mm/h"),
                    ("tested", $"{Amounts.Print(WeatherConstants.All["wash-off-rate"], 0)} mm/h"),
                    ("light", $"{Amounts.Print(WeatherConstants.All["wash-off-below"], 0)} mg")
                )
            );
        }

        return Finding.InOrder(remarks);
    }
}
