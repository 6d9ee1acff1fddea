using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Which lot of a kind to buy, and what stood beside it.</summary>
/// <remarks>The cheapest living pound is bought; of lots whose living pound costs the same, the one offered first.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedChoice : IWorkedResult
{
    private readonly ViabilityRule rule;

    internal SeedChoice(CropKind kind, ImmutableArray<SeedLot> lots, ViabilityRule rule)
    {
        this.rule = rule;
        Kind = kind;
        Uncounted = [.. lots.Where(l => WhyNot(l) is not null)];
        Ranked = [.. lots.Where(l => WhyNot(l) is null).Select(l => LotValue.For(l, rule)).OrderBy(v => v.PricePerLivingPound)];
    }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind { get; }

    /// <summary>Gets the lot to buy; null when none of the kind can be counted.</summary>
    public SeedLot? Lot => Ranked.IsEmpty ? null : Ranked[0].Lot;

    /// <summary>Gets what each lot is worth, the cheapest living pound first; the first is bought, the others are the
    /// runners-up.</summary>
    public ImmutableArray<LotValue> Ranked { get; }

    /// <summary>Gets the lots of the kind that could not be counted (<see cref="WhyNot"/> says why).</summary>
    public ImmutableArray<SeedLot> Uncounted { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Price.Origin!.Sources;

    private static Formula Price => SeedFormulas.All["price-of-living-pound"];

    /// <summary>Why a lot cannot be counted.</summary>
    /// <param name="lot">Lot of the kind.</param>
    /// <returns>The reason; null when it can.</returns>
    public string? WhyNot(SeedLot lot)
    {
        ArgumentNullException.ThrowIfNull(lot);
        return lot.PricePerPound is null ? "it has no price"
            : lot.PureLiveSeedPart(rule).Value <= 0 ? "nothing in it counts as alive"
            : null;
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
}
