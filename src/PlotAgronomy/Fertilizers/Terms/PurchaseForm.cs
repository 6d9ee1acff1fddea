namespace PlotAgronomy.Fertilizers;

/// <summary>What is bought whole and what is spread whole.</summary>
public enum PurchaseForm
{
    /// <summary>Any weight can be bought and spread, as at an elevator's scale.</summary>
    WeighExact,

    /// <summary>Whole packages are bought, the exact weight is spread, the rest is carried over. The default.</summary>
    BuyWholePackages,

    /// <summary>Whole packages are bought and every one is emptied on the plot.</summary>
    SpreadWholePackages,
}
