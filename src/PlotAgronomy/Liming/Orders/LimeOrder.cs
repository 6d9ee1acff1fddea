using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>How much of a real material to buy for a plot, in which parts, and what it costs.</summary>
public sealed class LimeOrder : IWorkedResult
{
    internal LimeOrder(LimeOrderTerms terms) => Terms = terms;

    /// <summary>Gets what was asked.</summary>
    public LimeOrderTerms Terms { get; }

    /// <summary>Gets the rate after earlier lime and depth, still in the lime of its institution.</summary>
    public required LimeRate BasisRate { get; init; }

    /// <summary>Gets the material's tons for each ton of the basis: the effectiveness of the basis divided by that of the
    /// product, a pure number.</summary>
    public required double ProductPerBasis { get; init; }

    /// <summary>Gets the exact rate of product that is needed.</summary>
    public required ApplicationRate ExactProductRate { get; init; }

    /// <summary>Gets the rate of product after the rounding asked for; the exact rate when none was.</summary>
    public required ApplicationRate ProductRate { get; init; }

    /// <summary>Gets the product already on the plot against this need, counted in the product ordered.</summary>
    public required Mass AlreadyApplied { get; init; }

    /// <summary>Gets the mass of product still to put on.</summary>
    public required Mass Product { get; init; }

    /// <summary>Gets the rate of product still to put on.</summary>
    public ApplicationRate ProductRateLeft => ApplicationRate.Of(Product, Terms.Area);

    /// <summary>Gets the whole bags to buy, or null for lime in bulk.</summary>
    public int? Bags { get; init; }

    /// <summary>Gets the cost in the plan's currency, of whole bags or of tons; null when no price was given.</summary>
    public decimal? Cost { get; init; }

    /// <summary>Gets the magnesium that comes with it, or null when the material's share is not known.</summary>
    public Mass? Magnesium { get; init; }

    /// <summary>Gets the parts it goes on in; empty when nothing is left to put on. They sum to <see cref="Product"/>.</summary>
    public required ImmutableArray<LimeDressing> Dressings { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <inheritdoc/>
    public required ImmutableArray<string> SourceIds { get; init; }

    /// <summary>Makes the order.</summary>
    /// <param name="terms">Plot, rate, material and way of putting it on.</param>
    /// <returns>The order.</returns>
    /// <exception cref="ArgumentException">A value outside its range, or a price without what it is the price of.</exception>
    /// <exception cref="InvalidOperationException">The material neutralizes nothing, or its figure in the index of the rate's
    /// basis is not known.</exception>
    /// <remarks>base rate - earlier lime; x depth worked / depth of the rate; x effectiveness of the basis / of the product;
    /// rounding when asked for; less what is already on; split at the most that goes on at once; x area.</remarks>
    public static LimeOrder For(LimeOrderTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return new LimeOrderWork(terms).Order();
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => LimeOrderLines.Of(this);
}
