namespace PlotAgronomy;

/// <summary>Texture class of the fine earth: the twelve classes of the USDA texture triangle.</summary>
public enum SoilTexture
{
    /// <summary>Sand.</summary>
    Sand,

    /// <summary>Loamy sand.</summary>
    LoamySand,

    /// <summary>Sandy loam.</summary>
    SandyLoam,

    /// <summary>Loam.</summary>
    Loam,

    /// <summary>Silt loam.</summary>
    SiltLoam,

    /// <summary>Silt.</summary>
    Silt,

    /// <summary>Sandy clay loam.</summary>
    SandyClayLoam,

    /// <summary>Clay loam.</summary>
    ClayLoam,

    /// <summary>Silty clay loam.</summary>
    SiltyClayLoam,

    /// <summary>Sandy clay.</summary>
    SandyClay,

    /// <summary>Silty clay.</summary>
    SiltyClay,

    /// <summary>Clay.</summary>
    Clay,
}
