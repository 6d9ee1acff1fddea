namespace PlotAgronomy.Spreading;

/// <summary>What repeated calibration runs allow.</summary>
public enum RepeatVerdict
{
    /// <summary>Fewer runs than are needed to judge.</summary>
    TooFewRuns,

    /// <summary>The runs differ too much among themselves: find out why before changing the gate.</summary>
    RunsDisagree,

    /// <summary>The runs agree, but their mean misses the target: change gate or pace and run again.</summary>
    OffTarget,

    /// <summary>The runs agree and their mean is near enough to the target.</summary>
    Accepted,
}
