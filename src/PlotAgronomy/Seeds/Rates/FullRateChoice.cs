namespace PlotAgronomy.Seeds;

/// <summary>How one rate was chosen of a range.</summary>
internal enum FullRateChoice
{
    /// <summary>Half way between the ends of a range of the user's own.</summary>
    Middle,

    /// <summary>Median of the middles of what publications print.</summary>
    Median,

    /// <summary>The lowest that is printed, for too few print one.</summary>
    Lowest,
}
