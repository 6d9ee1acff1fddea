namespace PlotAgronomy.Blends;

/// <summary>What a density target counts.</summary>
public enum DensityCount
{
    /// <summary>Seeds sown, of at least 90 % germination.</summary>
    Seeds,

    /// <summary>Live seeds sown of the kind.</summary>
    LiveSeeds,

    /// <summary>Plants that stand.</summary>
    Plants,

    /// <summary>Live seeds sown where kinds of the group are the whole stand.</summary>
    WholeStand,

    /// <summary>Live seeds of all kinds of a plot.</summary>
    WholePlot,
}
