namespace PlotAgronomy.Blends;

/// <summary>What happens to seed after it is broadcast.</summary>
public enum SeedCover
{
    /// <summary>Covered to the right depth and rolled.</summary>
    CoveredAndRolled,

    /// <summary>Only dragged, or only rolled.</summary>
    DraggedOrRolled,

    /// <summary>Left on rough or unworked ground.</summary>
    LeftOnRoughGround,
}
