using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>A store's bag beside plain seed: what it really plants, what an acre of living stand costs either way, and the
/// weights
/// that make the nearest blend from plain lots.</summary>
/// <remarks>Area really covered = claimed area x sum of shares of a full stand. The nearest blend keeps the bag's shares of a
/// full
/// stand among the kinds on offer, each from its cheapest lot per living pound, and gives the room of kinds not on offer to the
/// others in proportion. Both are brought to one full stand.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class BagOrPlainSeed : IWorkedResult
{
    private BagOrPlainSeed(Offer<StoreBlend> offer, Blend asClaimed, Blend? plain, ImmutableArray<CropKind> notOnOffer)
    {
        Offer = offer;
        AsClaimed = asClaimed;
        Plain = plain;
        NotOnOffer = notOnOffer;
    }

    /// <summary>Gets the bag with its price.</summary>
    public Offer<StoreBlend> Offer { get; }

    /// <summary>Gets the blend in the bag.</summary>
    public StoreBlend Bag => Offer.Item;

    /// <summary>Gets the blend that the bag makes on the area it claims.</summary>
    public Blend AsClaimed { get; }

    /// <summary>Gets the nearest blend from plain lots at one full stand; null when none of its kinds is on offer.</summary>
    public Blend? Plain { get; }

    /// <summary>Gets the kinds of the bag that no priced plain lot offers.</summary>
    public ImmutableArray<CropKind> NotOnOffer { get; }

    /// <summary>Gets the area that the bag sows to one full stand.</summary>
    public Area ReallyCovers => AreaAt(AsClaimed.StandTotal.Chosen);

    /// <summary>Gets the area that it sows to one full stand by the highest published full rates.</summary>
    public Area ReallyCoversAtLeast => AreaAt(AsClaimed.StandTotal.Lowest);

    /// <summary>Gets the area that it sows to one full stand by the lowest published full rates.</summary>
    public Area ReallyCoversAtMost => AreaAt(AsClaimed.StandTotal.Highest);

    /// <summary>Gets what an acre of full living stand costs from the bag.</summary>
    public decimal BagCostPerAcre
    {
        get
        {
            Area covered = ReallyCovers;
            double acres = covered.Acres;
            return BlendMath.CostPerAcre(Offer.Price, acres);
        }
    }

    /// <summary>Gets what an acre of full living stand costs from plain lots; null when none of the kinds is on offer.</summary>
    public decimal? PlainCostPerAcre => Plain is null ? null : CostOf(Plain.WeighFor(Area.FromAcres(1)));

    /// <summary>Gets the part of the bag's stand that plain lots cannot give.</summary>
    public Fraction ShareNotOnOffer =>
        Fraction.FromValue(
            Math.Min(1, AsClaimed.Parts.Where(p => NotOnOffer.Any(k => k.Id == p.Kind.Id)).Sum(p => p.ShareOfStand.Value))
        );

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks().Concat(Bag.Tag.Check()));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => AsClaimed.Sources;

    /// <summary>Compares a bag with plain lots.</summary>
    /// <param name="offer">Ready blend on offer in bags.</param>
    /// <param name="method">How it is sown.</param>
    /// <param name="plainLots">Plain lots on offer.</param>
    /// <param name="rule">Which seeds count as alive, for bag and lots alike; null takes the rule for each kind.</param>
    /// <returns>The comparison.</returns>
    /// <exception cref="ArgumentException">A blend that is not sold in bags.</exception>
    /// <exception cref="InvalidOperationException">No rate for this way of sowing, or no seed count, is known for a kind of the
    /// bag.</exception>
    public static BagOrPlainSeed Compare(
        Offer<StoreBlend> offer,
        SowingMethod method,
        IReadOnlyList<Offer<SeedLot>> plainLots,
        ViabilityRule? rule = null
    )
    {
        ArgumentNullException.ThrowIfNull(offer);
        ArgumentNullException.ThrowIfNull(plainLots);
        if (!offer.Package.IsWhole)
        {
            throw new ArgumentException("A ready blend claims an area for a bag; found it sold loose.", nameof(offer));
        }

        var bag = offer.Item;
        var asClaimed = Blend.FromTag(
            bag.Tag,
            ApplicationRate.FromMassAndArea(offer.Package.Weight, bag.ClaimedArea),
            method,
            rule
        );
        var shelf = SeedShelf.FromOffers([.. plainLots.OrderBy(o => o.Item.Label, StringComparer.Ordinal)]);
        var matched = asClaimed.Parts.Select(p => (Part: p, shelf.Cheapest(p.Kind, rule).Offer)).ToArray();
        var onOffer = matched.Where(m => m.Offer is not null).ToArray();
        var plain =
            onOffer.Length == 0
                ? null
                : Blend
                    .FromSharesOfFullStand([
                        .. onOffer.Select(m =>
                            (BlendComponent.FromOffer(m.Offer!, method, rule), m.Part.ShareOfFullStand.Chosen)
                        ),
                    ])
                    .AtStandTotal(1);
        return new(offer, asClaimed, plain, [.. matched.Where(m => m.Offer is null).Select(m => m.Part.Kind)]);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. AsClaimed.ShowWork(), CoveredLine(), BagCostLine(), .. PlainCostLines()];

    /// <summary>Whole bags that sow an area to one full stand, and what they cost.</summary>
    internal (int Bags, decimal Cost) BagsFor(Area area)
    {
        int bags = Package.RoundUp(BagsExactly(area));
        return (bags, Offer.CostOf(bags));
    }

    internal WorkedLine CoveredLine()
    {
        Area claimed = Bag.ClaimedArea,
            covered = ReallyCovers;
        return BlendFormulas
            .All["blend-area-covered"]
            .Line(
                Amounts.Print(covered, "ac", 3),
                ("claimed area", Amounts.Print(claimed, "ac", 3)),
                ("sum of shares of a full stand", Amounts.Print(AsClaimed.StandTotal.Chosen, 3))
            );
    }

    internal WorkedLine BagCostLine(Currency? currency = null)
    {
        Area covered = ReallyCovers;
        return BlendFormulas
            .All["blend-bag-cost"]
            .Line(
                Money(BagCostPerAcre, currency),
                ("price", Money(Offer.Price, currency)),
                ("area really covered", Amounts.Print(covered, "ac", 3))
            );
    }

    internal WorkedLine BagsLine(Area area)
    {
        Area covered = ReallyCovers;
        return BlendFormulas
            .All["blend-bags-for-area"]
            .Line(
                $"{Amounts.Print(BagsExactly(area), 2)}, so {Amounts.Print(BagsFor(area).Bags, 0)}",
                ("area", Amounts.Print(area, "ac", 3)),
                ("area a bag covers", Amounts.Print(covered, "ac", 3))
            );
    }

    /// <summary>What an acre of full living stand costs from plain lots, kind by kind and in all.</summary>
    internal IEnumerable<WorkedLine> PlainCostLines(Currency? currency = null)
    {
        if (Plain is null)
        {
            yield break;
        }

        var acre = Plain.WeighFor(Area.FromAcres(1)).Lines;
        foreach (var line in acre)
        {
            yield return BlendFormulas
                .All["blend-plain-cost"]
                .Line(
                    Money(CostOfLine(line), currency),
                    ("kind", line.Component.Kind.ShortName),
                    ("bulk rate", Amounts.Print(line.Weight.Pounds, 4)),
                    ("price", Amounts.Print((double)(line.Component.Offer?.PricePerPound ?? 0), 4))
                );
        }

        string costs = string.Join(" + ", acre.Select(l => Amounts.Print((double)CostOfLine(l), 2)));
        yield return BlendFormulas.Sum(
            "Plain seed, cost of an acre of full stand",
            $"{costs} = {Money(acre.Sum(CostOfLine), currency)}"
        );
    }

    private static decimal CostOf(BlendBatch batch) => batch.Lines.Sum(l => CostOfLine(l));

    private static decimal CostOfLine(BlendWeight line) =>
        BlendMath.Cost(line.Component.Offer?.PricePerPound ?? 0, line.Weight.Pounds);

    private static string Money(decimal amount, Currency? currency) =>
        currency?.Print(amount) ?? Amounts.Print((double)amount, 2);

    private double BagsExactly(Area area)
    {
        double acres = area.Acres;
        Area covered = ReallyCovers;
        return BlendMath.BagsExactly(acres, covered.Acres);
    }

    private Area AreaAt(double fullStands)
    {
        Area claimed = Bag.ClaimedArea;
        return Area.FromAcres(BlendMath.AcresCovered(claimed.Acres, fullStands));
    }

    private IEnumerable<Finding> Remarks()
    {
        if (Tolerance.IsBelow(AsClaimed.StandTotal.Chosen, BlendConstants.All["thin-bag"]))
        {
            Area claimed = Bag.ClaimedArea,
                covered = ReallyCovers;
            yield return FindingCatalog.Create(
                BlendCodes.BagThin,
                ("bag", Bag.Label),
                ("claimed", Amounts.Print(claimed, "ac", 2)),
                ("covers", Amounts.Print(covered, "ac", 2)),
                ("total", AsClaimed.StandTotal.ToString())
            );
        }

        if (!NotOnOffer.IsEmpty)
        {
            yield return FindingCatalog.Create(
                BlendCodes.NotOnOffer,
                ("kinds", StandNames.Of(NotOnOffer)),
                ("share", Amounts.Print(ShareNotOnOffer, 0))
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
