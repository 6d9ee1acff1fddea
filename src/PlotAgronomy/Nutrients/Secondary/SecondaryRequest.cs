namespace PlotAgronomy.Nutrients;

/// <summary>What rules for secondary and trace nutrients ask beyond the soil: lime to come, a test of the plants, a share
/// computed from the report. What is not known is null.</summary>
internal sealed class SecondaryRequest
{
    /// <summary>Whether lime is to be spread: then dolomitic lime brings magnesium.</summary>
    internal bool IsLimeDue { get; init; }

    /// <summary>The sulfur in the plants' dry matter, when tissue was tested.</summary>
    internal Fraction? TissueSulfur { get; init; }

    /// <summary>The share of the exchange capacity that magnesium holds, when it was computed.</summary>
    internal Fraction? MagnesiumSaturation { get; init; }
}
