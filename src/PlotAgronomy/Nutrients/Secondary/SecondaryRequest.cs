namespace PlotAgronomy.Nutrients;

/// <summary>What rules for secondary and trace nutrients ask beyond the soil: lime to come, a test of the plants, a share
/// computed from the report. What is not known is null.</summary>
public sealed class SecondaryRequest
{
    /// <summary>Gets a request that knows nothing beyond the soil.</summary>
    public static SecondaryRequest Unknown { get; } = new();

    /// <summary>Gets whether lime is to be spread: then dolomitic lime brings magnesium.</summary>
    public bool IsLimeDue { get; init; }

    /// <summary>Gets the sulfur in the plants' dry matter, when tissue was tested.</summary>
    public Fraction? TissueSulfur { get; init; }

    /// <summary>Gets the share of the exchange capacity that magnesium holds, when it was computed.</summary>
    public Fraction? MagnesiumSaturation { get; init; }
}
