namespace PlotAgronomy.Spreading;

/// <summary>One piece of work when several passes are sown.</summary>
public enum SeedingAction
{
    /// <summary>Spread a group of kinds.</summary>
    Spread,

    /// <summary>Drag, rake or disk lightly to cover what lies on the ground.</summary>
    Cover,

    /// <summary>Roll or tread to press the seed in.</summary>
    Press,
}
