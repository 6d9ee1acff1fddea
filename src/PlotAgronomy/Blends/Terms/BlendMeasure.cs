namespace PlotAgronomy.Blends;

/// <summary>What a share of a blend is counted in.</summary>
public enum BlendMeasure
{
    /// <summary>Share of a full stand: who will hold the ground.</summary>
    Stand,

    /// <summary>Number of live seeds.</summary>
    LiveSeeds,

    /// <summary>Weight of pure live seed.</summary>
    LiveWeight,

    /// <summary>Weight as it comes out of the bags.</summary>
    BulkWeight,
}
