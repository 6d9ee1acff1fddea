using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Lots of one kind ranked by the cost of an acre of the same live stand.</summary>
/// <remarks>The stand is a number of live seeds per square foot, so that a lot of smaller seed, with its own count, needs less
/// weight. cost per acre = bulk rate x price per lb. Plain arithmetic on SEED-S04's price of pure live seed.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedLotComparison : IWorkedResult
{
    private SeedLotComparison(PureLiveSeedRate target, ImmutableArray<RankedLot> ranked)
    {
        Target = target;
        Ranked = ranked;
    }

    private static Formula Cost => SeedFormulas.All["lot-cost"];

    private static Formula LivingPound => SeedFormulas.All["price-of-living-pound"];

    /// <summary>Gets the stand as a rate of pure live seed of the kind's own seed count.</summary>
    public PureLiveSeedRate Target { get; }

    /// <summary>Gets the lots, cheapest first.</summary>
    public ImmutableArray<RankedLot> Ranked { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Ranked
                .SelectMany(r => r.Lot.Cautions(Target.Method).Concat(r.Seeding.Findings).Concat(r.Value.Findings))
                .Concat(CoatedBesideBare(Ranked))
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Cost.Origin!.Sources.Union(Ranked.SelectMany(r => r.Seeding.Sources))];

    /// <summary>Ranks lots.</summary>
    /// <param name="offers">At least one lot on offer, all of one kind.</param>
    /// <param name="target">Stand to reach, as a rate of pure live seed.</param>
    /// <param name="rule">Which seeds count as alive; null takes the rule for the kind.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">No lots, lots of several kinds, or a lot without living seed.</exception>
    public static SeedLotComparison Rank(
        IReadOnlyList<Offer<SeedLot>> offers,
        PureLiveSeedRate target,
        ViabilityRule? rule = null
    )
    {
        var first = Guard.NotEmpty(offers)[0].Item.Kind;
        if (offers.FirstOrDefault(o => o.Item.Kind.Id != first.Id) is { } other)
        {
            throw new ArgumentException(
                $"Only lots of one kind can be ranked, found {first.ShortName} and {other.Item.Kind.ShortName}.",
                nameof(offers)
            );
        }

        var costed = offers
            .Select(offer => Costed(offer, target, rule))
            .OrderBy(c => c.Cost)
            .ThenBy(c => c.Value.Lot.Label, StringComparer.Ordinal)
            .ToList();
        decimal cheapest = costed[0].Cost;
        return new(
            target,
            [
                .. costed.Select(c => new RankedLot
                {
                    Place = 1 + costed.Count(o => o.Cost < c.Cost),
                    Value = c.Value,
                    Seeding = c.Seeding,
                    CostPerAcre = c.Cost,
                    OverCheapest = cheapest == 0 ? 0 : c.Cost / cheapest - 1,
                }),
            ]
        );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Ranked.SelectMany(r =>
                r.Seeding.ShowWork()
                    .Append(
                        LivingPound.Line(
                            Price(r),
                            ("lot", r.Lot.Label),
                            ("price per lb", Amounts.Print((double)r.Value.PricePerPound, 4)),
                            ("pure live seed", Amounts.Print(r.Seeding.PureLiveSeedPart.Value, 4))
                        )
                    )
                    .Append(r.CostLine())
            ),
        ];

    /// <summary>A coated lot beside the cheapest bare one, where there are both.</summary>
    private static IEnumerable<Finding> CoatedBesideBare(ImmutableArray<RankedLot> ranked)
    {
        var bare = ranked.FirstOrDefault(r => r.Lot.Analysis.Coating.Value <= 0);
        return bare is null
            ? []
            : ranked
                .Where(r => r.Lot.Analysis.Coating.Value > 0)
                .Select(coated =>
                    FindingCatalog.Create(
                        SeedCodes.CoatedBesideBare,
                        ("coated", coated.Lot.Label),
                        ("bare", bare.Lot.Label),
                        ("coatedPrice", Price(coated)),
                        ("barePrice", Price(bare))
                    )
                );
    }

    private static string Price(RankedLot lot) => Amounts.Print((double)lot.Value.PricePerLivingPound, 2);

    private static (LotValue Value, BulkSeeding Seeding, decimal Cost) Costed(
        Offer<SeedLot> offer,
        PureLiveSeedRate target,
        ViabilityRule? rule
    )
    {
        var value = LotValue.For(offer, rule);
        var lot = offer.Item;
        var own = lot is { OwnSeedCount: { } count, Kind.SeedCount: { } usual }
            ? target * (usual.SeedsPerPound / count.SeedsPerPound)
            : target;
        var seeding = lot.BulkRate(own, rule);
        return (value, seeding, SeedMath.CostPerAcre(seeding.Bulk.PoundsPerAcre, value.PricePerPound));
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
