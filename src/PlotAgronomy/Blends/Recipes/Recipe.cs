using System.Collections.Immutable;

namespace PlotAgronomy.Blends;

/// <summary>A proposed blend in weighable amounts, with its cost and what it covers.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Recipe
{
    internal Recipe(RecipeRequest request) => Request = request;

    /// <summary>Gets the blend.</summary>
    public required Blend Blend { get; init; }

    /// <summary>Gets the weights for the plot, unrounded; round them to the scale with
    /// <see cref="BlendBatch.RoundUpTo"/>.</summary>
    public required BlendBatch Batch { get; init; }

    /// <summary>Gets what the seed costs by weight, in the currency of the lots; the search compares recipes by it.</summary>
    public required decimal Cost { get; init; }

    /// <summary>Gets whether no cheaper recipe exists. False when the search stopped at its limit: a cheaper one may
    /// exist.</summary>
    public required bool IsProvenCheapest { get; init; }

    /// <summary>Gets what to buy: whole packages where a lot is sold so, and what the blend becomes when all of it is
    /// sown.</summary>
    public required BagOrder Packages { get; init; }

    /// <summary>Gets what the seed costs in whole packages, lots sold by weight at their weight; never below <see cref="Cost"/>
    /// but for dust.</summary>
    public decimal CostInPackages => Packages.Cost!.Value;

    /// <summary>Gets the seasons covered, what stands already included.</summary>
    public required SeasonCoverage Coverage { get; init; }

    /// <summary>Gets why each kind is in it, in words.</summary>
    public ImmutableArray<string> Reasons => [.. Blend.Parts.Select(p => RecipeReasons.For(p, Coverage, Request))];

    private RecipeRequest Request { get; }

    /// <summary>The blend and its cost.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Blend} = {Amounts.Print((double)Cost, 2)}";
}
