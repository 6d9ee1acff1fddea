using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Which lot of a kind to buy, and what stood beside it.</summary>
/// <remarks>The cheapest living pound is bought; of lots whose living pound costs the same, the one offered first.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedChoice : IWorkedResult
{
    private readonly ViabilityRule rule;

    internal SeedChoice(CropKind kind, ImmutableArray<Offer<SeedLot>> offers, ViabilityRule rule)
    {
        this.rule = rule;
        Kind = kind;
        Uncounted = [.. offers.Where(o => WhyNot(o) is not null)];
        Ranked = [.. offers.Where(o => WhyNot(o) is null).Select(o => LotValue.For(o, rule)).OrderBy(v => v.PricePerLivingPound)];
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the offer to take; null when none of the kind can be counted.</summary>
    public Offer<SeedLot>? Offer => Ranked.IsEmpty ? null : Ranked[0].Offer;

    /// <summary>Gets the lot to buy; null when none of the kind can be counted.</summary>
    public SeedLot? Lot => Offer?.Item;

    /// <summary>Gets what each lot is worth, the cheapest living pound first; the first is bought, the others are the
    /// runners-up.</summary>
    public ImmutableArray<LotValue> Ranked { get; }

    /// <summary>Gets the offers of the kind that could not be counted (<see cref="WhyNot"/> says why).</summary>
    public ImmutableArray<Offer<SeedLot>> Uncounted { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Price.Origin!.Sources;

    private static Formula Price => SeedFormulas.All["price-of-living-pound"];

    /// <summary>Why an offer cannot be counted.</summary>
    /// <param name="offer">Offer of the kind.</param>
    /// <returns>The reason; null when it can.</returns>
    public string? WhyNot(Offer<SeedLot> offer)
    {
        ArgumentNullException.ThrowIfNull(offer);
        return offer.Item.PureLiveSeedPart(rule).Value <= 0 ? "nothing in it counts as alive" : null;
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Ranked.Select(v =>
                Price.Line(
                    Amounts.Print((double)v.PricePerLivingPound, 2),
                    ("lot", v.Lot.Label),
                    ("price per lb", Amounts.Print((double)v.PricePerPound, 4)),
                    ("pure live seed", Amounts.Print(v.Lot.PureLiveSeedPart(rule).Value, 4))
                )
            ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
