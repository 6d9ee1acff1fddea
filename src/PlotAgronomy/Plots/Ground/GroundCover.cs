namespace PlotAgronomy;

/// <summary>What stands on the plot today.</summary>
public enum GroundCover
{
    /// <summary>Nothing.</summary>
    BareGround,

    /// <summary>An established legume stand.</summary>
    LegumeStand,

    /// <summary>A small grain.</summary>
    SmallGrain,

    /// <summary>A summer smother crop.</summary>
    SmotherCrop,

    /// <summary>Weeds, as on a fallow.</summary>
    Weeds,

    /// <summary>A grass sod.</summary>
    GrassSod,

    /// <summary>Brush and small trees.</summary>
    Brush,
}
