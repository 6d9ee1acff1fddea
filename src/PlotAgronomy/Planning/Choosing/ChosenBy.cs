namespace PlotAgronomy.Planning;

/// <summary>Who chose a published method.</summary>
public enum ChosenBy
{
    /// <summary>Nobody: none fits, or several do and nothing tells which.</summary>
    Nobody,

    /// <summary>The plan names it.</summary>
    Plan,

    /// <summary>It belongs to the institution whose recommendation is printed.</summary>
    PrintedRecommendation,

    /// <summary>It belongs to the laboratory of the report.</summary>
    Laboratory,

    /// <summary>It belongs to the place of the plot.</summary>
    Place,

    /// <summary>It is common practice, and nothing else reads the report.</summary>
    NothingElseReads,
}
