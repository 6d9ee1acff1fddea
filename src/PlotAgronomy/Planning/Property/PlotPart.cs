namespace PlotAgronomy.Planning;

/// <summary>A part of a plot's shopping that can be left out by itself.</summary>
internal enum PlotPart
{
    /// <summary>Nitrogen for the stand.</summary>
    Dressing,

    /// <summary>Lime.</summary>
    Lime,

    /// <summary>Fertilizer for the sowing.</summary>
    Fertilizer,
}
