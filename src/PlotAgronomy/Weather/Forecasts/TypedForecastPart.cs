namespace PlotAgronomy.Weather;

/// <summary>The part of a day that a line of a typed forecast speaks of.</summary>
public enum TypedForecastPart
{
    /// <summary>The whole day, from midnight to midnight.</summary>
    WholeDay,

    /// <summary>From six in the morning to six in the evening.</summary>
    Daytime,

    /// <summary>From six in the evening to six the next morning.</summary>
    Night,
}
