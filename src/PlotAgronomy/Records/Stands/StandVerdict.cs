namespace PlotAgronomy.Records;

/// <summary>What a count three to four weeks after sowing says of a stand.</summary>
public enum StandVerdict
{
    /// <summary>The count does not tell: too few hoops, or too early or late.</summary>
    Unsure,

    /// <summary>Hardly anything came up, whatever chance did to the count.</summary>
    Failed,

    /// <summary>Fewer came up than a stand needs.</summary>
    Thin,

    /// <summary>Enough came up.</summary>
    Full,
}
