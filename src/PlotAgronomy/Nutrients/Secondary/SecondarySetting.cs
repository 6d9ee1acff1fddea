namespace PlotAgronomy.Nutrients;

/// <summary>What rules for secondary and trace nutrients ask beyond the report. What is not known is null.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SecondarySetting
{
    /// <summary>Gets a setting that knows nothing beyond the report.</summary>
    public static SecondarySetting Unknown { get; } = new();

    /// <summary>Gets whether lime is to be spread: then dolomitic lime brings magnesium.</summary>
    public bool IsLimeDue { get; init; }

    /// <summary>Gets the sulfur in the plants' dry matter, when tissue was tested.</summary>
    public Fraction? TissueSulfur { get; init; }

    /// <summary>Gets the share of the exchange capacity that magnesium holds, when it was computed.</summary>
    public Fraction? MagnesiumSaturation { get; init; }

    /// <summary>Gets the soil class; null takes the report's.</summary>
    public SoilClass? SoilClass { get; init; }
}
