namespace PlotAgronomy.Weather;

/// <summary>How amounts of rain spread about their mean where it rains.</summary>
public enum RainShape
{
    /// <summary>Exponential: patchy rain, as of summer showers.</summary>
    Patchy,

    /// <summary>Gamma of shape 3: general rain over a whole county.</summary>
    General,
}
