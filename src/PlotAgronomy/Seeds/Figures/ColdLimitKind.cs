namespace PlotAgronomy.Seeds;

/// <summary>What a kind's cold limit means.</summary>
public enum ColdLimitKind
{
    /// <summary>Normally overwinters; no temperature is given.</summary>
    Overwinters,

    /// <summary>The temperature that ends the forage or kills hardened plants.</summary>
    Kill,

    /// <summary>The coldest range on record for a perennial; not a test of what kills it.</summary>
    RangeLimit,
}
