using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What a plot should receive this season, nutrient by nutrient: what the fertilizer sum starts from.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotNeed : IWorkedResult
{
    private readonly PlotNeedSum? sum;

    private PlotNeed(ImmutableArray<NutrientTarget> targets, PlotNeedSum? sum)
    {
        this.sum = sum;
        Targets = [.. targets.OrderBy(t => t.Nutrient)];
        Computed = sum is null ? [] : [.. sum.Computed.OrderBy(t => t.Nutrient)];
    }

    /// <summary>Gets the targets, at most one for a nutrient, in the order of <see cref="PlantNutrient"/>.</summary>
    public ImmutableArray<NutrientTarget> Targets { get; }

    /// <summary>Gets our own targets, which stand beside the laboratory's and those set by hand; empty for a stated
    /// need.</summary>
    public ImmutableArray<NutrientTarget> Computed { get; }

    /// <summary>Gets the laboratory's printed recommendation, when there was one.</summary>
    public PrintedRecommendation? Printed => sum?.Request.Printed;

    /// <summary>Gets the need of each kind of the blend; empty for a stated need.</summary>
    public ImmutableArray<ComponentNeed> Components => sum?.Components ?? [];

    /// <summary>Gets the dressings of the nitrogen, in the order in which they are spread.</summary>
    public ImmutableArray<NitrogenDose> NitrogenDoses => sum?.NitrogenDoses ?? [];

    /// <summary>Gets whether the potash is better given in two halves, for the soil holds too little to keep it (common
    /// practice: an exchange capacity of 3 meq/100 g or less).</summary>
    public bool IsPotashSplit => sum is not null && SeasonCautions.CapacityThatLeaches(sum) is not null;

    /// <summary>Gets the same need without what is too little to buy: below 15 lb N, 10 lb P2O5 or 10 lb K2O an acre (common
    /// practice). A stated need, and what was set by hand, stays as it is.</summary>
    public PlotNeed WorthBuying =>
        sum is { } known && Targets.Any(known.IsTooLittle)
            ? With(Targets.Select(t => known.IsTooLittle(t) ? PurchaseFloor.Without(t) : t))
            : this;

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => sum is null ? [] : Finding.InOrder(PlotNeedCautions.Of(sum));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        sum is null ? [] : [.. sum.Sources.Distinct().OrderBy(s => s.Id, StringComparer.Ordinal)];

    /// <summary>A need of which nothing is known.</summary>
    internal static PlotNeed Unknown { get; } = new([], null);

    /// <summary>The need of a plot by the rule for blends.</summary>
    /// <param name="request">Report, kinds with shares, system, and what else is known.</param>
    /// <returns>The need, with the need of each kind beside it.</returns>
    /// <exception cref="ArgumentException">Neither a kind nor a printed figure, a kind twice, a use of what is none of the kinds,
    /// two targets by hand for one nutrient, or a crop carried off without a yield.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share that counts is negative, NaN or infinite.</exception>
    /// <remarks>P and K by the shares of the kinds in the stand; secondary nutrients for the kinds at or above a share of a full
    /// stand (0.2 unless stated); nitrogen by the shares of the kinds that are not legumes, together at most one full stand, less
    /// the credit of a legume that grew there before. The laboratory's printed figures are used first; targets set by hand before
    /// all. Common practice.</remarks>
    public static PlotNeed For(PlotNeedRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        if (request is { Kinds.IsEmpty: true, Printed: null, Overrides.IsEmpty: true })
        {
            throw new ArgumentException("Without kinds a need has to be printed or set by hand.", nameof(request));
        }

        Guard.AtLeast(request.CountedFromShare ?? 0, 0, "of a full stand", nameof(request));
        if (request.Kinds.GroupBy(k => k.Kind.Id).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"{twice.First().Kind.ShortName} stands twice among the kinds.", nameof(request));
        }

        if (request.Uses.Keys.FirstOrDefault(id => request.Kinds.All(k => k.Kind.Id != id)) is { } unknown)
        {
            throw new ArgumentException(
                $"'{unknown}' is none of the kinds: {string.Join(", ", request.Kinds.Select(k => k.Kind.Id))}.",
                nameof(request)
            );
        }

        if (request.Overrides.GroupBy(t => t.Nutrient).FirstOrDefault(g => g.Count() > 1) is { } both)
        {
            throw new ArgumentException($"Two targets by hand for {SoilWords.For(both.Key)}.", nameof(request));
        }

        var sum = new PlotNeedSum(request);
        return new PlotNeed(sum.Used, sum);
    }

    /// <summary>The need of which nobody asks anything.</summary>
    internal static PlotNeed Nothing { get; } = new([], null);

    /// <summary>A need stated by the user, without a recommendation system behind it.</summary>
    /// <param name="targets">Targets; at least one, no nutrient twice.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">No target, or two for one nutrient.</exception>
    public static PlotNeed Stated(params IReadOnlyList<NutrientTarget> targets)
    {
        Guard.NotEmpty(targets);
        if (targets.GroupBy(t => t.Nutrient).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two targets for {SoilWords.For(twice.Key)}.", nameof(targets));
        }

        return new PlotNeed([.. targets], null);
    }

    /// <summary>Finds the target of a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The target, or null when nothing was said about this nutrient.</returns>
    public NutrientTarget? Find(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Targets.FirstOrDefault(t => t.Nutrient == nutrient);
    }

    /// <summary>How much is known of a nutrient: a rate, none needed, or nothing (open). No figure is never the same as no
    /// need.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>Given, none needed, or open where nobody gives a figure.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such nutrient.</exception>
    public AnswerState StateOf(PlantNutrient nutrient) =>
        Find(nutrient) is not { } target ? AnswerState.Open
        : target.AtLeast > ApplicationRate.Zero ? AnswerState.Given
        : AnswerState.NoneNeeded;

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => [.. Lines().Select(w => w.Line)];

    /// <summary>Lays out the lines of the sum for one nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The lines, in the order a person would write them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No such nutrient.</exception>
    public ImmutableArray<WorkedLine> ShowWork(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return [.. Lines().Where(w => w.Nutrient == nutrient).Select(w => w.Line)];
    }

    /// <summary>The ratings behind the needs for phosphate and potash, each once.</summary>
    internal IEnumerable<NutrientRating> Ratings =>
        Components
            .OrderByDescending(c => c.Component.ShareOfFullStand)
            .ThenBy(c => c.Component.Kind.Id, StringComparer.Ordinal)
            .SelectMany(c => new[] { c.Phosphate?.Rating, c.Potash?.Rating })
            .OfType<NutrientRating>()
            .DistinctBy(r => new { r.Reading.Analyte, r.Scale.Id });

    /// <summary>The rows that the kinds that count were read from.</summary>
    internal IEnumerable<RowRead> RowsRead =>
        Components
            .Where(c => c.Counts)
            .GroupAlike((one, other) => one.Row == other.Row)
            .Select(alike => new RowRead(alike[0].Row, [.. alike.Select(c => c.Component.Kind)]));

    /// <summary>Nitrogen, phosphate and potash without a figure, each with what to do about it; none where the need was
    /// stated.</summary>
    internal IEnumerable<(PlantNutrient Nutrient, Finding Cure)> NotKnown =>
        sum is null ? [] : sum.Cure.NotKnown.Select(n => (n, sum.Cure.Of(n)));

    /// <summary>The same need with other targets.</summary>
    internal PlotNeed With(IEnumerable<NutrientTarget> targets) => new([.. targets], sum);

    /// <summary>The other systems that would give a figure on this report for a nutrient without one.</summary>
    internal ImmutableArray<RecommendationSystem> ServedBy(PlantNutrient nutrient) => sum?.Cure.ServedBy(nutrient) ?? [];

    private ImmutableArray<(PlantNutrient Nutrient, WorkedLine Line)> Lines() =>
        sum is null ? [.. Targets.Select(t => (t.Nutrient, NeedLines.LineOf(t)))] : sum.Lines.For(sum.Used);

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
