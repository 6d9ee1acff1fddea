using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>Two plans held against each other: cost, seasons that feed, and which kinds may be sown.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlansSideBySide
{
    private PlansSideBySide(PlotAnswers first, PlotAnswers second)
    {
        First = first;
        Second = second;
    }

    /// <summary>Gets the answers of the first plan.</summary>
    public PlotAnswers First { get; }

    /// <summary>Gets the answers of the second plan.</summary>
    public PlotAnswers Second { get; }

    /// <summary>Gets by how much the second costs more; below zero where it costs less.</summary>
    public decimal DearerBy => Second.TotalCost - First.TotalCost;

    /// <summary>Gets for each season what stands to feed in it, as a part of a full stand; null where the seed of a plan cannot
    /// be weighed.</summary>
    public ImmutableArray<(SeasonOfUse Season, double? First, double? Second)> Seasons =>
        [.. Enum.GetValues<SeasonOfUse>().Select(s => (s, Share(First, s), Share(Second, s)))];

    /// <summary>Holds two plans against each other.</summary>
    /// <param name="first">A plan.</param>
    /// <param name="second">Another one.</param>
    /// <returns>Both.</returns>
    /// <exception cref="ArgumentException">Their prices are in different currencies.</exception>
    public static PlansSideBySide Of(PlotPlan first, PlotPlan second)
    {
        Guard.NotNull(first);
        Guard.NotNull(second);
        OneCurrency.Of([first, second], nameof(second));
        return new(first.Solve(), second.Solve());
    }

    /// <summary>Both plans.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{First} beside {Second}";

    private static double? Share(PlotAnswers answers, SeasonOfUse season) =>
        answers.Seed.TryGet(out var seed) ? seed.Seasons.Seasons.FirstOrDefault(s => s.Season == season)?.Share ?? 0 : null;
}
