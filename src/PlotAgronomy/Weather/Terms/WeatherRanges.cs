using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <summary>What weather can be at all: beyond it a file holds another unit or a slip.</summary>
internal static class WeatherRanges
{
    internal static double Coldest => WeatherConstants.All["coldest"];

    internal static double Hottest => WeatherConstants.All["hottest"];

    internal static double MostRain => WeatherConstants.All["most-rain"];

    internal static double MostWind => WeatherConstants.All["most-wind"];

    internal static double LowestWind => WeatherConstants.All["lowest-wind-height"];

    internal static double HighestWind => WeatherConstants.All["highest-wind-height"];

    internal static double LowestGround => WeatherConstants.All["lowest-ground"];

    internal static double HighestGround => WeatherConstants.All["highest-ground"];

    internal static double MostSun => WeatherConstants.All["most-sun"];

    internal static double Check(
        double value,
        double lowest,
        double highest,
        string unit,
        Func<string, DataFormatException> problem
    ) =>
        value >= lowest && value <= highest
            ? value
            : throw problem(FormattableString.Invariant($"{value} {unit} is not between {lowest} and {highest} {unit}"));
}
