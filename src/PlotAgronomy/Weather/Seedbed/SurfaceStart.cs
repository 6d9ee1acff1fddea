namespace PlotAgronomy.Weather;

/// <summary>How wet the surface is before the first day.</summary>
public enum SurfaceStart
{
    /// <summary>Air-dry, after a long dry time.</summary>
    Dry,

    /// <summary>Soaked, after a good rain.</summary>
    Soaked,
}
