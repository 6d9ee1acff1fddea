namespace PlotAgronomy.Seeds;

/// <summary>How long a sowing lives as it is grown in plots.</summary>
public enum LifeCycle
{
    /// <summary>One season; biennials grown as annuals are counted here.</summary>
    Annual,

    /// <summary>Two seasons.</summary>
    Biennial,

    /// <summary>Three seasons or more.</summary>
    Perennial,
}
