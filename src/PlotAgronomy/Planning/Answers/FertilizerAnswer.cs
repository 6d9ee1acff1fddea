using System.Collections.Immutable;
using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Planning;

/// <summary>The fertilizer to buy and spread.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FertilizerAnswer
{
    internal FertilizerAnswer() { }

    /// <summary>Gets a value indicating whether any nutrient is needed.</summary>
    public required bool IsNeeded { get; init; }

    /// <summary>Gets the cheapest set on offer, in whole packages; null when none is needed or none is on offer.</summary>
    public required Purchase? Purchase { get; init; }

    /// <summary>Gets other sets that meet every need and really differ from the cheapest.</summary>
    public required ImmutableArray<OtherPurchase> Others { get; init; }
}
