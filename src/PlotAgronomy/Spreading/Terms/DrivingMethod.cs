namespace PlotAgronomy.Spreading;

/// <summary>How passes follow each other over a plot.</summary>
public enum DrivingMethod
{
    /// <summary>Back and forth: right side lands on right side, left on left, by turns.</summary>
    BackAndForth,

    /// <summary>Every pass in the same direction, as round and round: right side lands on the left side of the pass
    /// before.</summary>
    OneDirection,
}
