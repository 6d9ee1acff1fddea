namespace PlotAgronomy;

/// <summary>How the ground is worked and the seed covered.</summary>
public enum PlantingMethod
{
    /// <summary>Ground tilled, firmed, sown by spreader, pressed.</summary>
    TilledAndPacked,

    /// <summary>Spread into a standing crop that is then rolled down over the seed.</summary>
    BroadcastThenRolled,

    /// <summary>Spread into standing growth that is then mown over the seed.</summary>
    BroadcastThenMown,

    /// <summary>Spread on frozen ground in late winter; freezing and thawing work the seed in.</summary>
    FrostSeeded,

    /// <summary>Placed by a drill.</summary>
    Drilled,
}
