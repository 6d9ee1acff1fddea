namespace PlotAgronomy.Planning;

/// <summary>What a purchase is beside the cheapest.</summary>
public enum RunnerUp
{
    /// <summary>The next cheapest.</summary>
    NextCheapest,

    /// <summary>The one with the fewest products.</summary>
    FewestProducts,

    /// <summary>The cheapest, where one that stays closer to the need was taken at like cost.</summary>
    Cheapest,

    /// <summary>The cheapest of those that do not go far above the need for phosphate and potash.</summary>
    ClosestToNeed,
}
