namespace PlotAgronomy.Fertilizers;

/// <summary>Crop that a limit for fertilizer near seed is printed for.</summary>
public enum SeedRowCrop
{
    /// <summary>Corn.</summary>
    Corn,

    /// <summary>Wheat.</summary>
    Wheat,

    /// <summary>Grain sorghum.</summary>
    GrainSorghum,

    /// <summary>Soybean.</summary>
    Soybean,

    /// <summary>Sunflower.</summary>
    Sunflower,

    /// <summary>Dry bean.</summary>
    DryBean,

    /// <summary>Small-seeded legumes.</summary>
    SmallSeededLegumes,

    /// <summary>Brassicas.</summary>
    Brassicas,
}
