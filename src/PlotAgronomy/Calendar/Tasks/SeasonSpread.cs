namespace PlotAgronomy.Calendar;

/// <summary>What is spread in a task, for whoever knows the products.</summary>
public enum SeasonSpread
{
    /// <summary>Nothing but, in a pass, its seed.</summary>
    None,

    /// <summary>The dressings of lime of the first day.</summary>
    FirstLime,

    /// <summary>A later dressing of lime.</summary>
    LaterLime,

    /// <summary>The fertilizer that is bought, without nitrogen that waits; half of the potash where the other half has a task
    /// of its own.</summary>
    Fertilizer,

    /// <summary>The other half of what brings potash.</summary>
    OtherHalf,

    /// <summary>Nitrogen that waits for the stand.</summary>
    Nitrogen,
}
