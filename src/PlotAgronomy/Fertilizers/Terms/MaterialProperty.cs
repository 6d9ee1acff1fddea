namespace PlotAgronomy.Fertilizers;

/// <summary>A published figure of a material.</summary>
public enum MaterialProperty
{
    /// <summary>Loose bulk density, low end, lb/ft3.</summary>
    BulkDensityLow,

    /// <summary>Loose bulk density, high end, lb/ft3.</summary>
    BulkDensityHigh,

    /// <summary>Density of a liquid, lb per US gallon.</summary>
    LiquidDensity,

    /// <summary>Salt index, sodium nitrate = 100.</summary>
    SaltIndex,

    /// <summary>Lime value, lb CaCO3 per 100 lb, negative when it acidifies.</summary>
    LimeValue,

    /// <summary>Critical relative humidity, percent at about 30 C.</summary>
    CriticalHumidity,
}
