namespace PlotAgronomy.Weather;

/// <summary>Whether to sow on a day: by the most serious of its reasons, never by a sum of them.</summary>
public enum PlantingVerdict
{
    /// <summary>Nothing speaks against it.</summary>
    Sow,

    /// <summary>Something is to be taken care of.</summary>
    SowWithCare,

    /// <summary>Something speaks against it.</summary>
    Wait,
}
