using System.Collections.Immutable;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Planning;

/// <summary>Why a system neither gives a rate nor a rating.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SystemSilence
{
    internal SystemSilence() { }

    /// <summary>Gets the system.</summary>
    public required RecommendationSystem System { get; init; }

    /// <summary>Gets what it says itself, by nutrient; none where it could not be asked.</summary>
    public required ImmutableArray<UnansweredNutrient> Unanswered { get; init; }

    /// <summary>Gets the row it would be asked for; null when none comes near.</summary>
    public required CropRow? NearestRow { get; init; }

    /// <summary>Gets the unit of the yield that this row asks for; null without a row.</summary>
    public YieldUnit? YieldUnit => NearestRow is { } row ? CropRows.UnitOf(row) : null;

    /// <summary>Whether it would answer for this report if it were told more: a fact of the plot, or a yield.</summary>
    internal bool WouldAnswer => Unanswered.IsEmpty ? YieldUnit is not null : Unanswered.Any(u => u.LacksFact);

    /// <summary>The system and why it is silent.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{System}: {string.Join("; ", Unanswered)}";
}
