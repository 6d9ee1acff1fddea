using System.Collections.Immutable;
using PlotAgronomy.Blends;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Planning;

/// <summary>The seed to weigh out and buy, how crowded the stand will be, and whether the kinds fit each other and the
/// plot.</summary>
/// <remarks>What looks further than the weights is worked out when it is first asked for.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedAnswer
{
    private readonly PlotPlan plan;
    private readonly Lazy<BlendFit> fit;
    private readonly Lazy<SeasonCoverage> seasons;

    internal SeedAnswer(PlotPlan plan, Func<SeedAnswer, BlendFit> fit, Func<SeedAnswer, SeasonCoverage> seasons)
    {
        this.plan = plan;
        this.fit = new(() => fit(this));
        this.seasons = new(() => seasons(this));
    }

    /// <summary>Gets the kinds as one blend.</summary>
    public required Blend Blend { get; init; }

    /// <summary>Gets the blend weighed out for the plot.</summary>
    public required BlendBatch Batch { get; init; }

    /// <summary>Gets how crowded the stand will be.</summary>
    public required CrowdingReport Crowding { get; init; }

    /// <summary>Gets each kind with its lot, in the order of the plan.</summary>
    public required ImmutableArray<SownKind> Kinds { get; init; }

    /// <summary>Gets whether the kinds fit each other and the plot: pH, wetness, depth, inoculants, nitrogen, companions, poison
    /// and other cautions. What is not known of the plot is not checked.</summary>
    public BlendFit Fit => fit.Value;

    /// <summary>Gets the published days that suit all kinds; open until the region is known, with a case for each
    /// region.</summary>
    public Answer<CommonDates> Dates => SeedParts.Dates(Blend, Fit);

    /// <summary>Gets in which seasons the stand feeds, sown and standing, and which it leaves bare.</summary>
    public SeasonCoverage Seasons => seasons.Value;

    /// <summary>Gets the kinds that would fill the bare seasons at the share that covers one, best first; none where no season
    /// is bare.</summary>
    public ImmutableArray<SeasonAddition> Additions =>
        Seasons.Lacking > 0
            ? Seasons.BestAdditions(
                KindCatalog.Standard.Kinds.Where(k => Blend.Parts.All(p => p.Kind.Id != k.Id)),
                Seasons.ShareWanted
            )
            : [];

    /// <summary>Gets how evenly the stand is spread over its kinds, by share of a full stand, which is what its designer
    /// meant.</summary>
    public Diversity Diversity => Diversity.For(Blend, BlendMeasure.Stand);

    /// <summary>Gets how much the kinds of a blend mixed in one heap may vary by chance from the whole to the part that one
    /// hopper takes.</summary>
    public BatchSpread Spread => BatchSpread.For(Blend, Batch.Total);

    /// <summary>Gets the rate of a kind that is sown alone held against the published range; not needed for a blend, whose rates
    /// are shares of a full stand.</summary>
    public Answer<RateCheck> RateCheck => SeedParts.RateCheck(Blend.Parts);

    /// <summary>The seed of all kinds, to weigh out.</summary>
    internal BulkSeedMass InAll => BulkSeedMass.FromPounds(Kinds.Sum(k => k.Weight.Pounds));

    /// <summary>The way of sowing that the rates are for.</summary>
    internal SowingMethod SownBy => Blend.Parts[0].Component.Method;

    /// <summary>The kinds whose rate depends much on whether hard and dormant seed counts as living.</summary>
    internal IEnumerable<SownKind> KindsWithBothRates =>
        Kinds.Where(k => k.FromOthers.IsEmpty && k.Bulk is { ShowBothRates: true, CountingGerminationOnly: not null });

    /// <summary>What stands open here.</summary>
    internal IEnumerable<OpenQuestion> Questions =>
        [
            .. Kinds.SelectMany(k => k.Test.Questions),
            .. Dates.Questions,
            .. SeedParts.FullRates(plan),
            .. PlantingQuestions.Contradiction(plan) is { } meant ? [meant] : Array.Empty<OpenQuestion>(),
            .. plan.Plot.Drainage is null ? [SeedQuestions.Drainage()] : Array.Empty<OpenQuestion>(),
        ];

    /// <summary>The results that no section of the sheet tells; the tests of lots are told by lot.</summary>
    internal IEnumerable<IWorkedResult?> WithoutSection => [Fit, Seasons, Diversity, Spread, RateCheck.OrNull()];

    /// <summary>The kinds and their weights.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join("; ", Kinds);
}
