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

    /// <summary>The fertilizer that is bought.</summary>
    Fertilizer,
}
