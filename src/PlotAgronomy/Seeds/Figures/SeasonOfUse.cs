namespace PlotAgronomy.Seeds;

/// <summary>The five seasons in which a plot is used.</summary>
public enum SeasonOfUse
{
    /// <summary>March to May.</summary>
    Spring,

    /// <summary>June to August.</summary>
    Summer,

    /// <summary>September to mid October.</summary>
    EarlyFall,

    /// <summary>Mid October to November.</summary>
    MidFall,

    /// <summary>December to February.</summary>
    LateWinter,
}
