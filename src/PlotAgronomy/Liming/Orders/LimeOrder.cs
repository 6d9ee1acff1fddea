using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>How much of a real material to buy for a plot, in which parts, and what it costs.</summary>
public sealed class LimeOrder : IWorkedResult
{
    private LimeOrder(LimeOrderTerms terms) => Terms = terms;

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
        var sum = new LimeOrderSum(terms);
        return new LimeOrder(terms)
        {
            BasisRate = sum.BasisRate,
            ProductPerBasis = sum.ProductPerBasis,
            ExactProductRate = sum.ExactProductRate,
            ProductRate = sum.ProductRate,
            AlreadyApplied = Mass.FromPounds(sum.AppliedPounds),
            Product = Mass.FromPounds(sum.ProductPounds),
            Bags = sum.Bags,
            Cost = sum.Cost,
            Magnesium = sum.Magnesium,
            Dressings = sum.Dressings,
            Findings = sum.Findings,
            SourceIds = sum.SourceIds,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        var lines = ImmutableArray.CreateBuilder<WorkedLine>();
        lines.Add(new("Rate", "with its labels", Terms.Rate.ToString(), Terms.Rate.Basis.SourceId));
        if (Terms.EarlierLime?.CreditBy(Terms.Rate.Institution, Terms.SoilClass) is { } credit)
        {
            lines.Add(
                new(
                    "Earlier lime taken off",
                    "R - R x months x k, never below 0",
                    $"{LimeText.Tons(credit.PoundsPerAcre)} ton/ac",
                    "LIME-S7"
                )
            );
        }

        double from = Terms.Rate.Depth.Inches;
        double to = BasisRate.Depth.Inches;
        if (!Tolerance.AreEqual(to, from))
        {
            lines.Add(
                new(
                    "For the depth worked",
                    "rate x depth worked / depth of the rate",
                    $"x {Amounts.Print(to, 2)} / {Amounts.Print(from, 2)} = "
                        + $"{LimeText.Tons(BasisRate.OfBasis.PoundsPerAcre)} ton/ac",
                    "PRACTICE"
                )
            );
        }

        lines.Add(
            new(
                $"Rate of {Terms.Material.Name}",
                "rate x strength of its lime / strength of the material",
                $"{LimeText.Tons(BasisRate.OfBasis.PoundsPerAcre)} x {Amounts.Print(ProductPerBasis, 4)} = "
                    + $"{LimeText.Tons(ExactProductRate.PoundsPerAcre)} ton/ac = "
                    + $"{Amounts.Print(ExactProductRate.PoundsPerThousandSquareFeet, 1)} lb/1000 ft2",
                Terms.Rate.Basis.Figure?.Index.SourceId
            )
        );
        if (Terms.Rounding is { } rounding)
        {
            lines.Add(
                new(
                    "Rounded",
                    $"to {Amounts.Print(rounding.Step, "ton/ac")} as {rounding.Institution} does",
                    $"{LimeText.Tons(ProductRate.PoundsPerAcre)} ton/ac",
                    rounding.SourceId
                )
            );
        }

        double applied = AlreadyApplied.Pounds;
        if (applied > 0)
        {
            lines.Add(new("Already applied", "counted in this material", Amounts.Print(AlreadyApplied, "lb", 1)));
        }

        string less = applied > 0 ? " - " + Amounts.Print(AlreadyApplied, "lb", 1) : "";
        lines.Add(
            new(
                "For the plot",
                applied > 0 ? "rate x area - already applied" : "rate x area",
                $"{Amounts.Print(ProductRate, "lb/ac", 1)} x {Amounts.Print(Terms.Area, "ac", 3)}{less} = "
                    + $"{Amounts.Print(Product, "lb", 1)} = {Amounts.Print(Product, "ton", 3)}"
            )
        );
        if (Bags is { } bags)
        {
            lines.Add(
                new(
                    "Whole bags",
                    "mass / bag, rounded up",
                    $"{Amounts.Print(bags, 0)} bags of {Amounts.Print(Terms.Bag!.Value, "lb", 1)}"
                )
            );
        }

        if (Dressings.Length > 1)
        {
            lines.AddRange(Dressings.Select(LineOf));
        }

        return lines.ToImmutable();
    }

    private static WorkedLine LineOf(LimeDressing part)
    {
        string when = part.On is { } day ? LimeText.Date(day) : $"month {Amounts.Print(part.MonthsAfterFirst, 0)}";
        string bags = part.Bags is { } count ? $", {Amounts.Print(count, 0)} bags" : "";
        return new(
            $"Dressing {Amounts.Print(part.Number, 0)}",
            "the last part takes the rest",
            $"{when}: {Amounts.Print(part.Mass, "lb", 1)}{bags}"
        );
    }
}
