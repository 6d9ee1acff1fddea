namespace PlotAgronomy.Weather;

/// <summary>Intensity of rain by the classes of observers in the United States.</summary>
public enum RainIntensity
{
    /// <summary>At most 0.10 in an hour.</summary>
    Light,

    /// <summary>From 0.11 to 0.30 in an hour.</summary>
    Moderate,

    /// <summary>Above 0.30 in an hour.</summary>
    Heavy,
}
