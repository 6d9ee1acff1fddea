namespace PlotAgronomy;

/// <summary>Who or what knows a missing fact.</summary>
public enum WhomToAsk
{
    /// <summary>The laboratory that made the report.</summary>
    Laboratory,

    /// <summary>The dealer who sells the product.</summary>
    Dealer,

    /// <summary>The tag on the bag.</summary>
    Tag,

    /// <summary>A tape, a scale or a stopwatch.</summary>
    Tape,

    /// <summary>The owner, who looks at the plot or decides.</summary>
    OwnEyes,
}
