using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>How far a small batch scooped from a well-mixed blend may be from the blend, by chance and by the scale.</summary>
/// <remarks>N = batch weight x share of weight x seeds per lb; coefficient of variation = 1 / sqrt(N); 95 % range = 1.96 /
/// sqrt(N).
/// The large seeds limit a small batch. It does not consider that a bag sorts itself on the road: mix before scooping.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class BatchSpread : IWorkedResult
{
    internal BatchSpread() { }

    /// <summary>Gets the bulk weight of the batch.</summary>
    public required BulkSeedMass Batch { get; init; }

    /// <summary>Gets the kinds with their counts and ranges.</summary>
    public required ImmutableArray<BatchKindSpread> Kinds { get; init; }

    private ImmutableArray<BlendPart> Parts { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings =>
        Finding.InOrder(
            Kinds
                .Where(k => k.NinetyFivePercentRange > BlendConstants.All["small-batch-spread"])
                .Select(k =>
                    FindingCatalog.Create(
                        BlendCodes.SmallBatch,
                        ("kind", k.Kind.ShortName),
                        ("batch", Batch.ToString()),
                        ("seeds", Amounts.Print(k.LiveSeeds, 0)),
                        ("range", Amounts.Print(k.NinetyFivePercentRange * 100, 0))
                    )
                )
        );

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => BlendConstants.All.Find("small-batch-spread").Origin.Sources;

    /// <summary>Spread of a batch taken from a blend.</summary>
    /// <param name="blend">Blend, well mixed.</param>
    /// <param name="batch">Bulk weight scooped out, above 0.</param>
    /// <returns>The spread of every kind.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A weight of zero.</exception>
    public static BatchSpread For(Blend blend, BulkSeedMass batch)
    {
        ArgumentNullException.ThrowIfNull(blend);
        double pounds = Guard.Above(batch.Pounds, 0, "lb", nameof(batch));
        ImmutableArray<BatchKindSpread> kinds =
        [
            .. blend.Parts.Select(p => new BatchKindSpread
            {
                Kind = p.Kind,
                LiveSeeds = BlendMath.LiveSeedsIn(
                    pounds,
                    p.ShareOfBulkWeight.Value,
                    p.Component.PureLiveFraction,
                    p.Component.SeedsPerPound
                ),
            }),
        ];
        return new BatchSpread
        {
            Batch = batch,
            Parts = blend.Parts,
            Kinds = kinds,
        };
    }

    /// <summary>What half a step of the scale makes of each weight of a batch.</summary>
    /// <param name="batch">Batch to weigh out.</param>
    /// <param name="step">Step the scale reads to; finite, above 0.</param>
    /// <returns>One remark for each weight that half a step changes by more than 1 %.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A step not above 0, NaN or infinite.</exception>
    public static ImmutableArray<Finding> CheckWeighing(BlendBatch batch, Mass step)
    {
        ArgumentNullException.ThrowIfNull(batch);
        double stepPounds = step.Pounds;
        Guard.Above(stepPounds, 0, "lb", nameof(step));
        return Finding.InOrder(
            batch
                .Lines.Where(l => Tolerance.IsAbove(stepPounds / 2, l.Weight.Pounds * BlendConstants.All["weighing-error"]))
                .Select(l =>
                    FindingCatalog.Create(
                        BlendCodes.CoarseScale,
                        ("kind", l.Component.Kind.ShortName),
                        ("weight", l.Weight.ToString()),
                        ("error", Amounts.Print(stepPounds / 2 / l.Weight.Pounds * 100, 1))
                    )
                )
        );
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Kinds
                .Zip(Parts)
                .SelectMany<(BatchKindSpread Kind, BlendPart Part), WorkedLine>(k =>
                    [
                        BlendFormulas
                            .All["blend-seeds-in-batch"]
                            .Line(
                                Amounts.Print(k.Kind.LiveSeeds, 0),
                                ("kind", k.Kind.Kind.ShortName),
                                ("batch", Amounts.Print(Batch.Pounds, 3)),
                                ("share of the weight", Amounts.Print(k.Part.ShareOfBulkWeight.Value, 4)),
                                ("pure live seed", Amounts.Print(k.Part.Component.PureLiveFraction, 4)),
                                ("seeds per lb", Amounts.Print(k.Part.Component.SeedsPerPound, 0))
                            ),
                        BlendFormulas
                            .All["blend-range-of-batch"]
                            .Line(
                                $"{Amounts.Print(k.Kind.NinetyFivePercentRange * 100, 1)} %",
                                ("kind", k.Kind.Kind.ShortName),
                                ("standard deviations", Amounts.Print(SeedMath.NormalNinetyFive, 2)),
                                ("live seeds", Amounts.Print(k.Kind.LiveSeeds, 0))
                            ),
                    ]
                ),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
