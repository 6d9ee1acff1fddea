namespace PlotAgronomy.Seeds;

/// <summary>What a publication's figure is for. Plots and forage go before cover crops and grain.</summary>
internal enum SeedPurpose
{
    /// <summary>Plots for wildlife.</summary>
    Plot,

    /// <summary>Pasture, hay and grazing.</summary>
    Forage,

    /// <summary>Cover crops and gardens.</summary>
    CoverCrop,

    /// <summary>A crop of seed or beets.</summary>
    Grain,
}
