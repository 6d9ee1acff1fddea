namespace PlotAgronomy.Seeds;

/// <summary>What a published planting date means.</summary>
public enum PlantingRule
{
    /// <summary>Plant from the first to the last day.</summary>
    Window,

    /// <summary>Plant no later than the last day.</summary>
    Latest,

    /// <summary>Not recommended there.</summary>
    NotRecommended,
}
