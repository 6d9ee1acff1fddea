using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>What a recipe must do for a plot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RecipeRequest
{
    /// <summary>Gets the area to sow; finite, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public required Area Area
    {
        get;
        init => field = Guard.Positive(value, nameof(Area));
    }

    /// <summary>Gets how the seed is sown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public required SowingMethod Method
    {
        get;
        init => field = Guard.Defined(value, nameof(Method));
    }

    /// <summary>Gets the seasons that must be covered.</summary>
    public ImmutableArray<SeasonOfUse> Seasons
    {
        get;
        init => field = Guard.Made(value, nameof(Seasons));
    } = [];

    /// <summary>Gets the most that the seed for the area may cost; null for no limit; at least 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative.</exception>
    public decimal? Budget
    {
        get;
        init => field = value is { } limit ? Guard.AtLeast(limit, 0m, "for the area", nameof(Budget)) : null;
    }

    /// <summary>Gets the least sum of shares of a full stand, what stands already included; from 0 to 3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range.</exception>
    public double TotalFrom
    {
        get;
        init => field = Guard.Between(value, 0, BlendConstants.All["recipe-total-limit"], "full stands", nameof(TotalFrom));
    } = BlendConstants.All["recipe-least-total"];

    /// <summary>Gets the greatest sum of shares of a full stand, what stands already included; from 0 to 3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range.</exception>
    public double TotalTo
    {
        get;
        init => field = Guard.Between(value, 0, BlendConstants.All["recipe-total-limit"], "full stands", nameof(TotalTo));
    } = BlendConstants.All["recipe-most-total"];

    /// <summary>Gets the fewest kinds to sow; at least 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than 1.</exception>
    public int MinimumKinds
    {
        get;
        init => field = Guard.AtLeast(value, 1, "kind", nameof(MinimumKinds));
    } = 1;

    /// <summary>Gets the fewest plant families to sow; at least 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than 1.</exception>
    public int MinimumFamilies
    {
        get;
        init => field = Guard.AtLeast(value, 1, "family", nameof(MinimumFamilies));
    } = 1;

    /// <summary>Gets the smallest share of a full stand worth sowing of a kind, rounded up to whole steps; above 0, at most
    /// 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range.</exception>
    public double SmallestShare
    {
        get;
        init => field = Guard.AboveUpTo(value, 0, 1, "of a full stand", nameof(SmallestShare));
    } = BlendConstants.All["recipe-smallest-share"];

    /// <summary>Gets the largest share of a full stand to sow of a kind; above 0, at most 3.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range.</exception>
    public double LargestShare
    {
        get;
        init =>
            field = Guard.AboveUpTo(value, 0, BlendConstants.All["recipe-total-limit"], "of a full stand", nameof(LargestShare));
    } = BlendConstants.All["recipe-largest-share"];

    /// <summary>Gets the step in which shares are chosen; from 0.01 to 0.5.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range.</exception>
    public double Step
    {
        get;
        init =>
            field = Guard.Between(
                value,
                BlendConstants.All["recipe-finest-step"],
                BlendConstants.All["recipe-coarsest-step"],
                "of a full stand",
                nameof(Step)
            );
    } = BlendConstants.All["recipe-step"];

    /// <summary>Gets the share of a full stand that covers a season; above 0, at most 1; null takes the 0.25 of
    /// practice.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside its range.</exception>
    public double? SeasonShare
    {
        get;
        init => field = value is { } share ? Guard.AboveUpTo(share, 0, 1, "of a full stand", nameof(SeasonShare)) : null;
    }

    /// <summary>Gets the soil of the plot, whose pH and drainage a kind must stand; null when every kind may be proposed. A
    /// report will do.</summary>
    public PlotSoil? Soil { get; init; }

    /// <summary>Gets what stands on the plot already.</summary>
    public ImmutableArray<KindShare> Standing
    {
        get;
        init => field = Guard.Listed(value, nameof(Standing));
    } = [];

    /// <summary>Gets which seeds count as alive; null takes the rule for each kind.</summary>
    public ViabilityRule? Rule { get; init; }

    internal double ShareThatCovers => SeasonShare ?? BlendConstants.All["season-share"];

    /// <summary>The area, the way of sowing and the seasons.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Area, decimals: 2)}, {SowingMethods.InWords(Method)}"
        + string.Concat(Seasons.Select(s => $", {SeasonalUse.SeasonWords[s]}"));
}
