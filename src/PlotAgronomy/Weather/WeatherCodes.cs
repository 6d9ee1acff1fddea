namespace PlotAgronomy.Weather;

/// <summary>The codes of this room's findings and questions, as its tables hold them.</summary>
internal static class WeatherCodes
{
    internal const string AskEmergence = "weather-ask-emergence";
    internal const string AskFreeze = "weather-ask-freeze";
    internal const string AskRain = "weather-ask-rain";
    internal const string AskTemperatures = "weather-ask-temperatures";
    internal const string AskTexture = "weather-ask-texture";
    internal const string BeforeFrost = "weather-before-frost";
    internal const string ChanceBelowMention = "weather-chance-below-mention";
    internal const string DaysIncomplete = "weather-days-incomplete";
    internal const string FarFromEquator = "weather-far-from-equator";
    internal const string FewYears = "weather-few-years";
    internal const string FlaggedDropped = "weather-flagged-dropped";
    internal const string FromTemperatures = "weather-from-temperatures";
    internal const string LayerIsDeeper = "weather-layer-is-deeper";
    internal const string NotUp = "weather-not-up";
    internal const string PrintedDaysCounted = "weather-printed-days-counted";
    internal const string RainLikely = "weather-rain-likely";
    internal const string RainUnlikely = "weather-rain-unlikely";
    internal const string RainUnsure = "weather-rain-unsure";
    internal const string RainUntold = "weather-rain-untold";
    internal const string RainWithoutChance = "weather-rain-without-chance";
    internal const string SeedEaters = "weather-seed-eaters";
    internal const string SoilIsEstimated = "weather-soil-is-estimated";
    internal const string SoilTooCold = "weather-soil-too-cold";
    internal const string SproutsDry = "weather-sprouts-dry";
    internal const string SunFromRange = "weather-sun-from-range";
    internal const string SunshineTooLong = "weather-sunshine-too-long";
    internal const string SwollenDries = "weather-swollen-dries";
    internal const string TooColdToSow = "weather-too-cold-to-sow";
    internal const string TooLate = "weather-too-late";
    internal const string UpOn = "weather-up-on";
    internal const string WashOff = "weather-wash-off";
    internal const string YearsWithoutFreeze = "weather-years-without-freeze";
}
