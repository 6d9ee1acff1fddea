namespace PlotAgronomy.Planning;

/// <summary>What becomes of one kind of the blend on this plot and day.</summary>
public enum KindDecision
{
    /// <summary>Sow it.</summary>
    Sow,

    /// <summary>Sow it from other seed: this lot is treated and would lie on the surface.</summary>
    OtherSeed,

    /// <summary>Sow it only after a soil test shows the pH it needs.</summary>
    AfterTest,

    /// <summary>Keep it for its own season.</summary>
    NotThisSeason,

    /// <summary>Leave it out here: it does not stand this ground.</summary>
    LeaveOut,
}
