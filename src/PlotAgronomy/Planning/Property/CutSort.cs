namespace PlotAgronomy.Planning;

/// <summary>What is cut for a budget, in this order: first what harms least.</summary>
internal enum CutSort
{
    /// <summary>Nitrogen for the stand, which can still be given when there is money.</summary>
    Dressing,

    /// <summary>Lime that raises a pH which every kind bears already.</summary>
    Lime,

    /// <summary>A kind without which no season is left bare.</summary>
    DearKind,

    /// <summary>Fertilizer for the sowing.</summary>
    Fertilizer,

    /// <summary>A whole plot, while there is another.</summary>
    WholePlot,
}
