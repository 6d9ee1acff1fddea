namespace PlotAgronomy.Liming;

/// <summary>What a lime sum notices on its way.</summary>
[Flags]
internal enum LimeRemarks
{
    None = 0,

    /// <summary>The reading lies between two printed rows.</summary>
    Interpolated = 1,

    /// <summary>A printed cell that was used has a finding of its own.</summary>
    CellMarked = 2,

    /// <summary>The reading is just where one printed rule ends and the next begins.</summary>
    RuleGap = 4,

    /// <summary>The exchange capacity is as large as the method stops at.</summary>
    CapacityOutside = 8,

    /// <summary>The need is as large as the method stops at.</summary>
    NeedOutside = 16,
}
