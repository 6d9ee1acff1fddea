using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The bulk rate that delivers a rate of pure live seed, with what makes it uncertain.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BulkSeeding : IWorkedResult
{
    private readonly SeedAnalysis analysis;
    private readonly CropKind? kind;
    private readonly double part;

    internal BulkSeeding(PureLiveSeedRate target, SeedAnalysis analysis, ViabilityRule rule, double part, CropKind? kind)
    {
        this.analysis = analysis;
        this.kind = kind;
        this.part = part;
        Target = target;
        Rule = rule;
        Bulk = At(part);
    }

    /// <summary>Gets the rate of pure live seed to deliver.</summary>
    public PureLiveSeedRate Target { get; }

    /// <summary>Gets the rule of what counts as alive.</summary>
    public ViabilityRule Rule { get; }

    /// <summary>Gets the part of the bag's weight that is pure live seed.</summary>
    public Fraction PureLiveSeedPart => Fraction.FromValue(part);

    /// <summary>Gets the rate to put through the spreader.</summary>
    public BulkSeedRate Bulk { get; }

    /// <summary>Gets the bulk rate when only germination counts; null when nothing germinated.</summary>
    public BulkSeedRate? CountingGerminationOnly => analysis.Tetrazolium is null ? AtOrNull(ViabilityRule.GerminationOnly) : null;

    /// <summary>Gets the bulk rate when germination, hard and dormant seed count; null when there is none of them, as beside a
    /// tetrazolium test.</summary>
    public BulkSeedRate? CountingHardAndDormant => analysis.Tetrazolium is null ? AtOrNull(ViabilityRule.TotalViable) : null;

    /// <summary>Gets a value indicating whether hard and dormant seed are above 10 %, so that both rates should be
    /// shown.</summary>
    public bool ShowBothRates => analysis.HardSeed.Value + analysis.DormantSeed.Value > SeedConstants.All["hard-or-dormant-much"];

    /// <summary>Gets the bulk rate at the upper end of the germination test's 95 % range; null when the seeds tested are not
    /// known.</summary>
    public BulkSeedRate? BulkIfSeedIsBetter =>
        TrueGermination is (_, var high) ? At(analysis.PureSeed.Value * Math.Min(1, high + Credited)) : null;

    /// <summary>Gets the bulk rate at the lower end of the germination test's 95 % range; null when the seeds tested are not
    /// known.</summary>
    public BulkSeedRate? BulkIfSeedIsWorse =>
        TrueGermination is (var low, _) && low + Credited > 0 ? At(analysis.PureSeed.Value * (low + Credited)) : null;

    /// <summary>Gets the equal-weight rate of a coated lot: the target's weight, taken straight from the bag. One trial series
    /// found equal stands at it (SEED-S49), so it is the lower bound; null for bare seed.</summary>
    public BulkSeedRate? EqualWeightRate => analysis.Coating.Value > 0 ? BulkSeedRate.FromRate(Target.Rate, Target.Method) : null;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. Rule.Sources.Concat(Findings.Select(f => f.Source)).Distinct()];

    /// <summary>The 95 % range of the true germination; null when the seeds tested are not known, or a tetrazolium test
    /// stands for all else.</summary>
    private (double Low, double High)? TrueGermination =>
        analysis is { SeedsTested: { } seeds, Tetrazolium: null } && Rule.Tested is null
            ? SeedMath.Exact(analysis.Germination.Value * seeds, seeds)
            : null;

    /// <summary>What counts as alive beyond what germinated.</summary>
    private double Credited => Rule.Viable(analysis).Value - analysis.Germination.Value;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork()
    {
        string viable = Amounts.Print(Rule.Viable(analysis), 2);
        int decimals = Bulk.PoundsPerAcre < 1 ? 3 : 2;
        return
        [
            Rule.Line(analysis),
            SeedFormulas
                .All["pure-live-seed"]
                .Line(
                    Amounts.Print(PureLiveSeedPart, 2),
                    ("pure seed", Amounts.Print(analysis.PureSeed, 2)),
                    ("viable seed", viable)
                ),
            SeedFormulas
                .All["bulk-rate"]
                .Line(
                    $"{Amounts.Print(Bulk.Rate, "lb/ac", decimals)}, {SowingMethods.InWords(Bulk.Method)}",
                    ("PLS rate", Amounts.Print(Target.Rate, "lb/ac", 3)),
                    ("pure live seed", Amounts.Print(part, 4))
                ),
        ];
    }

    private BulkSeedRate At(double pureLive) =>
        BulkSeedRate.FromRate(
            ApplicationRate.FromPoundsPerAcre(SeedMath.BulkPoundsPerAcre(Target.PoundsPerAcre, pureLive)),
            Target.Method
        );

    private BulkSeedRate? AtOrNull(ViabilityRule rule) => rule.PureLivePart(analysis) is > 0 and var p ? At(p) : null;

    private IEnumerable<Finding> Remarks()
    {
        if (part < SeedConstants.All["pure-live-seed-low"])
        {
            yield return FindingCatalog.Create(SeedCodes.LowPureLive, ("part", Amounts.Print(PureLiveSeedPart, 1)));
        }

        if (EqualWeightRate is { } equal)
        {
            yield return FindingCatalog.Create(
                SeedCodes.Coated,
                ("coating", Amounts.Print(analysis.Coating, 1)),
                ("equal", Amounts.Print(equal.Rate, "lb/ac", 2)),
                ("bulk", Amounts.Print(Bulk.Rate, "lb/ac", 2))
            );
        }

        if (ShowBothRates)
        {
            yield return FindingCatalog.Create(
                SeedCodes.MuchHardOrDormant,
                ("hard", Amounts.Print(Fraction.FromValue(Math.Min(1, analysis.HardSeed.Value + analysis.DormantSeed.Value)), 1)),
                ("counted", Amounts.Print(CountingHardAndDormant!.Value.Rate, "lb/ac", 2)),
                ("germination", CountingGerminationOnly is { } only ? Amounts.Print(only.Rate, "lb/ac", 2) : "no rate")
            );
        }

        if (BulkIfSeedIsBetter is { } better && BulkIfSeedIsWorse is { } worse)
        {
            yield return FindingCatalog.Create(
                SeedCodes.GerminationRange,
                ("seeds", Amounts.Print(analysis.SeedsTested!.Value, 0)),
                ("low", Amounts.Print(better.Rate, "lb/ac", 2)),
                ("high", Amounts.Print(worse.Rate, "lb/ac", 2))
            );
        }

        if (
            kind is not null
            && analysis.Tetrazolium is null
            && SeedAnalysis.GerminationFloorFor(kind) is var floor
            && analysis.Germination < floor
        )
        {
            yield return FindingCatalog.Create(
                SeedCodes.BelowFloor,
                ("germination", Amounts.Print(analysis.Germination, 1)),
                ("floor", Amounts.Print(floor, 1)),
                ("kind", kind.ShortName)
            );
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
