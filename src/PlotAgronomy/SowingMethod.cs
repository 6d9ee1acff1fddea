namespace PlotAgronomy;

/// <summary>How seed reaches the ground. A seeding rate means nothing without it.</summary>
public enum SowingMethod
{
    /// <summary>Placed at a set depth in rows.</summary>
    Drilled,

    /// <summary>Spread on a prepared seedbed and pressed in.</summary>
    Broadcast,

    /// <summary>Spread into a standing crop that is then rolled down or mown over it.</summary>
    BroadcastUnderCover,

    /// <summary>Spread on bare frozen ground in late winter.</summary>
    FrostSeeded,
}
