namespace PlotAgronomy.Weather;

/// <summary>Where the seed lies.</summary>
public enum SeedPlacement
{
    /// <summary>On the surface, not pressed.</summary>
    OnSurface,

    /// <summary>On the surface, pressed into close touch with the soil.</summary>
    PressedIn,

    /// <summary>Covered with soil.</summary>
    Covered,
}
