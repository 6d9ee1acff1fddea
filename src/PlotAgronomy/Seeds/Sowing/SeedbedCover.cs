namespace PlotAgronomy.Seeds;

/// <summary>What happens to broadcast seed; it decides how much more of it is needed than of drilled seed.</summary>
public enum SeedbedCover
{
    /// <summary>Covered to the right depth and rolled.</summary>
    CoveredAndRolled,

    /// <summary>Only dragged or only rolled.</summary>
    DraggedOrRolled,

    /// <summary>Left on rough or unworked ground.</summary>
    SurfaceOnRoughGround,
}
