namespace PlotAgronomy.Planning;

/// <summary>What a purchase is beside the cheapest.</summary>
public enum RunnerUp
{
    /// <summary>The next cheapest.</summary>
    NextCheapest,

    /// <summary>The one with the fewest products.</summary>
    FewestProducts,
}
