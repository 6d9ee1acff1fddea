namespace PlotAgronomy.Seeds;

/// <summary>How much a kind is used in a season; ordered from least to most.</summary>
public enum UseRating
{
    /// <summary>No use recorded.</summary>
    None,

    /// <summary>L.</summary>
    Low,

    /// <summary>M.</summary>
    Medium,

    /// <summary>H.</summary>
    High,
}
