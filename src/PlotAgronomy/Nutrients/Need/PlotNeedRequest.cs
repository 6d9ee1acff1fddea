using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>Everything the need of a plot depends on.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotNeedRequest
{
    /// <summary>Gets the soil; a report will do.</summary>
    public required PlotSoil Soil
    {
        get;
        init => field = Guard.NotNull(value, nameof(Soil));
    }

    /// <summary>Gets the kinds to grow, with their shares of a full stand; none where only the printed figures are
    /// followed.</summary>
    public required ImmutableArray<KindShare> Kinds
    {
        get;
        init => field = Guard.Listed(value, nameof(Kinds));
    }

    /// <summary>Gets the recommendation system; null where none is known, and then phosphate and potash have no figure of ours.
    /// None is chosen in silence.</summary>
    public required RecommendationSystem? System { get; init; }

    /// <summary>Gets the years over which a poor soil is built up; null takes the system's own (Missouri: 4 or 8 for
    /// phosphorus).</summary>
    public int? BuildUpYears { get; init; }

    /// <summary>Gets the laboratory's own recommendation: used first, ours beside it.</summary>
    public PrintedRecommendation? Printed { get; init; }

    /// <summary>Gets what is said about single kinds, by the kind's id: another row, a yield, carried off, another nitrogen
    /// rule.</summary>
    public ImmutableDictionary<string, KindUse> Uses
    {
        get;
        init => field = Guard.NotNull(value, nameof(Uses));
    } = ImmutableDictionary<string, KindUse>.Empty;

    /// <summary>Gets the nitrogen an earlier or existing legume leaves; kinds sown together give each other none in the first
    /// season.</summary>
    public LegumeCreditAnswer? LegumeCredit { get; init; }

    /// <summary>Gets whether the legumes are sown with the right inoculant, or stand with nodules.</summary>
    public bool LegumesAreInoculated { get; init; } = true;

    /// <summary>Gets the share of a full stand from which a kind counts for the secondary nutrients, and for what is said of its
    /// row; null takes 0.2. P and K count every kind by its share.</summary>
    public double? CountedFromShare { get; init; }

    /// <summary>Gets the rules for secondary and trace nutrients; by default the careful boron rule only.</summary>
    public ImmutableArray<SecondaryRule> SecondaryRules
    {
        get;
        init => field = Guard.Listed(value, nameof(SecondaryRules));
    } = [SecondaryRule.PlotBoron];

    /// <summary>Gets whether lime is to be spread: then dolomitic lime brings magnesium.</summary>
    public bool IsLimeDue { get; init; }

    /// <summary>Gets the sulfur in the plants' dry matter, when tissue was tested.</summary>
    public Fraction? TissueSulfur { get; init; }

    /// <summary>Gets the share of the exchange capacity that magnesium holds, when it was computed.</summary>
    public Fraction? MagnesiumSaturation { get; init; }

    /// <summary>Gets targets set by hand: they go before the laboratory's and ours.</summary>
    public ImmutableArray<NutrientTarget> Overrides
    {
        get;
        init => field = Guard.Listed(value, nameof(Overrides));
    } = [];

    /// <summary>The soil, the kinds and the system.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{string.Join(", ", Kinds)} on {Soil} by {System}";
}
