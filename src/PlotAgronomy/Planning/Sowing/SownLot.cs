using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>Seed of one lot that a kind is sown from.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SownLot
{
    /// <param name="alone">The bulk seed it would take if it gave all.</param>
    internal SownLot(Mass alone) => Alone = alone;

    internal Mass Alone { get; }

    /// <summary>Gets the lot as it is bought or taken from the shed.</summary>
    public required Offer<SeedLot> Offer
    {
        get;
        init => field = Guard.NotNull(value, nameof(Offer));
    }

    /// <summary>Gets the bulk seed to weigh out of it.</summary>
    public required Mass Weight { get; init; }

    /// <summary>Gets the whole packages of it; null where it is sold by weight.</summary>
    public required int? Packages { get; init; }

    /// <summary>Gets the price of the packages, in the plan's currency.</summary>
    public decimal Cost => Packages is { } packages ? Offer.CostOf(packages) : BlendMath.Cost(Offer.PricePerPound, Weight.Pounds);

    /// <summary>The sum behind the weight: so much of the living seed, at the strength of this lot.</summary>
    internal WorkedLine Line()
    {
        double alone = Alone.Pounds,
            pounds = Weight.Pounds;
        return BlendFormulas
            .All["blend-seed-of-lot"]
            .Line(
                $"{Amounts.Print(pounds, 2)} lb",
                ("lot", Offer.Item.ToString()),
                ("part of the living seed", Amounts.Print(pounds / alone, 4)),
                ("what it would take alone", $"{Amounts.Print(alone, 4)} lb")
            );
    }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Offer.Item}: {Amounts.Print(Weight, "lb", 2)}";

    /// <summary>What each lot gives of a kind: first the one that is planned, as far as there is of it, then the others whose
    /// living pound costs least; living seed counts alike.</summary>
    /// <param name="plan">Plan.</param>
    /// <param name="kind">Kind with the lot that goes first.</param>
    /// <param name="weigh">The bulk seed that a lot would take for the whole.</param>
    /// <param name="missing">The part of the whole for which there is no seed, 0 to 1.</param>
    internal static ImmutableArray<SownLot> For(PlotPlan plan, PlannedKind kind, Func<SeedLot, Mass> weigh, out double missing)
    {
        var lots = ImmutableArray.CreateBuilder<SownLot>();
        missing = 1;
        foreach (var offer in InTurn(plan, kind))
        {
            double whole = weigh(offer.Item).Pounds,
                wanted = BlendMath.OfLot(missing, whole);
            double there = offer.Available is { } count ? count * offer.Package.Pounds : double.PositiveInfinity;
            bool isEnough = there >= wanted * (1 - Tolerance.Dust);
            double taken = isEnough ? wanted : there;
            if (taken > 0 || lots.Count == 0)
            {
                var weight = Mass.FromPounds(taken);
                lots.Add(
                    new SownLot(Mass.FromPounds(whole))
                    {
                        Offer = offer,
                        Weight = weight,
                        Packages = offer.Package.CountFor(weight),
                    }
                );
            }

            missing = isEnough || whole <= 0 ? 0 : missing - taken / whole;
            if (missing <= 0)
            {
                break;
            }
        }

        return lots.ToImmutable();
    }

    private static IEnumerable<Offer<SeedLot>> InTurn(PlotPlan plan, PlannedKind kind) =>
        kind.Offer.Available is null
            ? [kind.Offer]
            : SeedShelf
                .FromOffers(plan.SeedOffers)
                .Cheapest(kind.Kind)
                .Ranked.Select(v => v.Offer)
                .Where(o => o != kind.Offer && !o.Item.IsUntagged && o.Item.IsTreated == kind.Offer.Item.IsTreated)
                .Prepend(kind.Offer);
}
