namespace PlotAgronomy.Records;

/// <summary>By what kinds and blends are ranked.</summary>
public enum RankedMeasure
{
    /// <summary>Plants for each living seed sown, at three to four weeks.</summary>
    Emergence,

    /// <summary>The part of what stood that deer ate, by browse.</summary>
    Browse,
}
