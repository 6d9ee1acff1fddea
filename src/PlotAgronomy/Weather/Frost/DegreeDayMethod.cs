namespace PlotAgronomy.Weather;

/// <summary>How degree days are counted from a high and a low. They differ on days whose low lies below the base.</summary>
public enum DegreeDayMethod
{
    /// <summary>The mean of high and low less the base, at least nothing.</summary>
    SimpleAverage,

    /// <summary>High and low are first raised to the base, and cut at the upper limit where there is one.</summary>
    Clipped,

    /// <summary>The area above the base of a sine wave through low and high.</summary>
    SingleSine,
}
