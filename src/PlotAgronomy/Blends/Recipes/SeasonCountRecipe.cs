namespace PlotAgronomy.Blends;

/// <summary>The cheapest recipe that covers at least a number of seasons.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeasonCountRecipe
{
    /// <summary>Gets the number of seasons to cover, from 0 to 5.</summary>
    public required int Seasons { get; init; }

    /// <summary>Gets the recipe; null when the lots on offer cannot cover so many.</summary>
    public required Recipe? Recipe { get; init; }

    /// <summary>Gets whether the search stopped at its limit before it found one: then nothing is known of whether the lots
    /// can.</summary>
    public required bool IsUndecided { get; init; }

    /// <summary>The seasons and the recipe.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Amounts.Print(Seasons, 0)} seasons: {Recipe?.ToString() ?? WithoutRecipe}";

    private string WithoutRecipe => IsUndecided ? "not known" : "not to be had";
}
