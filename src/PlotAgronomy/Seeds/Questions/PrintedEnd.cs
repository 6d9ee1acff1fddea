namespace PlotAgronomy.Seeds;

/// <summary>An end of what publications print.</summary>
internal enum PrintedEnd
{
    /// <summary>The lowest figure.</summary>
    Lowest,

    /// <summary>The highest figure.</summary>
    Highest,
}
