using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Does a blend work together, and on this plot? Soil, depth, dates, inoculants, nitrogen, companions and
/// cautions.</summary>
/// <remarks>Crowding and seasons are reports of their own. State seed and weed lists govern; this only warns.</remarks>
public sealed class BlendFit : IWorkedResult
{
    private readonly FitFacts facts;

    private BlendFit(FitFacts facts)
    {
        this.facts = facts;
        Findings = Finding.InOrder(FitFindings.Of(facts));
    }

    /// <summary>Gets the blend with its weights.</summary>
    public BlendBatch Batch => facts.Batch;

    /// <summary>Gets what is known of the plot.</summary>
    public PlotConditions Conditions => facts.Conditions;

    /// <summary>Gets the lowest pH that every kind stands; null when none suits all, or none is known.</summary>
    public double? LowestPh => facts.PhSpan is { } span && span.Low <= span.High ? span.Low : null;

    /// <summary>Gets the highest pH that every kind stands; null when none suits all, or none is known.</summary>
    public double? HighestPh => facts.PhSpan is { } span && span.Low <= span.High ? span.High : null;

    /// <summary>Gets the wettest drainage that every kind stands; null when none suits all, or none is known.</summary>
    public DrainageClass? WettestDrainage => facts.DrainageSpan is { } span && span.Wettest <= span.Driest ? span.Wettest : null;

    /// <summary>Gets the driest drainage that every kind stands; null when none suits all, or none is known.</summary>
    public DrainageClass? DriestDrainage => facts.DrainageSpan is { } span && span.Wettest <= span.Driest ? span.Driest : null;

    /// <summary>Gets the passes in which to sow: what is covered first, large seed before small; as few as the rules of
    /// <see cref="BlendPass"/> allow.</summary>
    public ImmutableArray<BlendPass> Passes => facts.Passes;

    /// <summary>Gets the inoculant for each legume that needs some.</summary>
    public ImmutableArray<InoculantNeed> Inoculants => facts.Inoculants;

    /// <summary>Gets the published days that suit the kinds; null when no region is given.</summary>
    public CommonDates? Dates => facts.Dates;

    /// <summary>Gets the nitrogen that the legumes fix in a year, sown and standing, as N: straight lines through nothing, the
    /// printed figure for a quarter stand and that for a pure one; a share above 1 fixes what a pure stand does.</summary>
    public ApplicationRate NitrogenFixed =>
        facts
            .Members.Where(m => m.Kind.Nitrogen is not null)
            .Aggregate(ApplicationRate.Zero, (sum, m) =>
                sum
                + ApplicationRate.FromPoundsPerAcre(
                    BlendMath.NitrogenFixed(
                        m.Share,
                        BlendRules.NitrogenQuarterStand,
                        m.Kind.Nitrogen!.QuarterStand.PoundsPerAcre,
                        m.Kind.Nitrogen.PureStand.PoundsPerAcre
                    )
                )
            );

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        [
            .. facts
                .Parts.SelectMany(p =>
                    (p.Kind.Ph?.Evidence.SourceIds ?? [])
                        .Concat(p.Kind.Drainage?.Evidence.SourceIds ?? [])
                        .Concat(p.Kind.Depth?.Evidence.SourceIds ?? [])
                )
                .Append("PRACTICE")
                .Distinct(),
        ];

    /// <summary>Checks a blend for a plot.</summary>
    /// <param name="batch">Blend with its weights for the plot.</param>
    /// <param name="conditions">What is known of the plot; null checks the kinds against each other only.</param>
    /// <returns>The report.</returns>
    public static BlendFit Of(BlendBatch batch, PlotConditions? conditions = null)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return new(new FitFacts(batch, conditions ?? new PlotConditions()));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            new(
                "pH that every kind stands",
                "highest minimum to lowest maximum",
                LowestPh is { } low && HighestPh is { } high
                    ? $"{Amounts.Print(low, 1)} to {Amounts.Print(high, 1)}"
                    : "none in common"
            ),
            new(
                "Drainage that every kind stands",
                "driest of the wettest limits to wettest of the driest",
                WettestDrainage is { } wet && DriestDrainage is { } dry
                    ? $"{DrainageTolerance.Classes[wet]} to {DrainageTolerance.Classes[dry]}"
                    : "none in common"
            ),
            .. Passes.Select(
                (p, i) =>
                    new WorkedLine(
                        $"Pass {i + 1}",
                        "covered or pressed alike, largest / smallest diameter at most 2",
                        p.ToString(),
                        "PRACTICE"
                    )
            ),
            new(
                "Nitrogen fixed",
                "sum over the legumes by their share of a full stand",
                Amounts.Print(NitrogenFixed, "lb/ac", 0),
                "KIND-UGA-NFIX"
            ),
        ];
}
