namespace PlotAgronomy.Fertilizers;

/// <summary>Soil that a limit for fertilizer near seed is printed for.</summary>
public enum SeedRowSoil
{
    /// <summary>Any soil.</summary>
    Any,

    /// <summary>Medium to fine texture.</summary>
    MediumToFine,

    /// <summary>Sandy.</summary>
    Sandy,

    /// <summary>Sandy, or dry at sowing.</summary>
    SandyOrDry,

    /// <summary>Exchange capacity below 12 meq/100 g.</summary>
    ExchangeCapacityBelow12,

    /// <summary>Exchange capacity above 12 meq/100 g.</summary>
    ExchangeCapacityAbove12,
}
