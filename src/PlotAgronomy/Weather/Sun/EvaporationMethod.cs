namespace PlotAgronomy.Weather;

/// <summary>How reference evaporation was found.</summary>
public enum EvaporationMethod
{
    /// <summary>FAO Penman-Monteith: temperature, humidity, wind and sun.</summary>
    PenmanMonteith,

    /// <summary>Hargreaves: temperatures alone.</summary>
    Hargreaves,
}
