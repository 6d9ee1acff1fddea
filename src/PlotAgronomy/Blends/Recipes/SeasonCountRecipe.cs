namespace PlotAgronomy.Blends;

/// <summary>The cheapest recipe that covers at least a number of seasons.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonCountRecipe
{
    /// <summary>Gets the number of seasons to cover, from 0 to 5.</summary>
    public required int Seasons { get; init; }

    /// <summary>Gets the recipe; null when the lots on offer cannot cover so many.</summary>
    public required Recipe? Recipe { get; init; }
}
