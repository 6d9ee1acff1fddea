namespace PlotAgronomy.Seeds;

/// <summary>Season of planting.</summary>
public enum PlantingSeason
{
    /// <summary>Spring.</summary>
    Spring,

    /// <summary>Summer.</summary>
    Summer,

    /// <summary>Fall.</summary>
    Fall,

    /// <summary>Late winter, on frozen ground.</summary>
    LateWinter,
}
