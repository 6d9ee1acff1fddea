namespace PlotAgronomy.Weather;

/// <summary>The wind of a day at the height that the equations are printed for.</summary>
internal static class WindOfDay
{
    /// <summary>In m/s at 2 m; null where no wind is known.</summary>
    internal static double? AtTwoMeters(WeatherDay day)
    {
        if (day.Wind is not { MetersPerSecond: var wind })
        {
            return null;
        }

        double reference = WeatherConstants.All["wind-height-reference"];
        double height = day.WindHeight is { Meters: var meters } ? meters : reference;
        return height == reference ? wind : AirMath.WindAtTwoMeters(wind, height);
    }
}
