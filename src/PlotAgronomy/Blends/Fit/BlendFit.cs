using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>Does a blend work together, and on this plot? Soil, depth, dates, inoculants, nitrogen, companions and
/// cautions.</summary>
/// <remarks>Crowding and seasons are reports of their own. State seed and weed lists govern; this only warns.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class BlendFit : IWorkedResult
{
    private readonly FitFacts facts;

    private BlendFit(FitFacts facts) => this.facts = facts;

    /// <summary>Gets the blend with its weights.</summary>
    internal BlendBatch Batch => facts.Batch;

    /// <summary>Gets the lowest pH that every kind stands; null when none suits all, or none is known.</summary>
    public double? LowestPh => facts.PhSpan is { } span && span.Low <= span.High ? span.Low : null;

    /// <summary>Gets the highest pH that every kind stands; null when none suits all, or none is known.</summary>
    public double? HighestPh => facts.PhSpan is { } span && span.Low <= span.High ? span.High : null;

    /// <summary>Gets the wettest drainage that every kind stands; null when none suits all, or none is known.</summary>
    public DrainageClass? WettestDrainage => facts.DrainageSpan is { } span && span.Wettest <= span.Driest ? span.Wettest : null;

    /// <summary>Gets the driest drainage that every kind stands; null when none suits all, or none is known.</summary>
    public DrainageClass? DriestDrainage => facts.DrainageSpan is { } span && span.Wettest <= span.Driest ? span.Driest : null;

    /// <summary>Gets the passes in which to sow: what is covered first, large seed before small; as few as the rules of
    /// <see cref="SeedPass"/> allow.</summary>
    public ImmutableArray<SeedPass> Passes => facts.Passes;

    /// <summary>Gets the inoculant for each legume that needs some.</summary>
    public ImmutableArray<InoculantNeed> Inoculants => facts.Inoculants;

    /// <summary>Gets the published days that suit the kinds; null when no region is given.</summary>
    public CommonDates? Dates => facts.Dates;

    /// <summary>Gets the nitrogen that the legumes fix in a year, sown and standing, as N: straight lines through nothing, the
    /// printed figure for a quarter stand and that for a pure one; a share above 1 fixes what a pure stand does.</summary>
    public ApplicationRate NitrogenFixed =>
        Fixing.Aggregate(ApplicationRate.Zero, (sum, m) => sum + ApplicationRate.FromPoundsPerAcre(NitrogenOf(m)));

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FitFindings.Of(facts));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. facts
                .Parts.SelectMany(p =>
                    (p.Kind.Ph?.Evidence.Sources ?? [])
                        .Concat(p.Kind.Drainage?.Evidence.Sources ?? [])
                        .Concat(p.Kind.Depth?.Evidence.Sources ?? [])
                )
                .Concat(BlendFormulas.All["blend-pass-diameters"].Origin!.Sources)
                .Distinct(),
        ];

    /// <summary>Checks a blend for a plot.</summary>
    /// <param name="batch">Blend with its weights for the plot.</param>
    /// <param name="request">What is known of the plot; null checks the kinds against each other only.</param>
    /// <returns>The report.</returns>
    public static BlendFit For(BlendBatch batch, BlendFitRequest? request = null)
    {
        ArgumentNullException.ThrowIfNull(batch);
        return new(new FitFacts(batch, request ?? new BlendFitRequest()));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            BlendFormulas
                .All["blend-common-range"]
                .Line(
                    LowestPh is { } low && HighestPh is { } high
                        ? $"{Amounts.Print(low, 1)} to {Amounts.Print(high, 1)}"
                        : "none in common",
                    ("trait", "pH")
                ),
            BlendFormulas
                .All["blend-common-range"]
                .Line(
                    WettestDrainage is { } wet && DriestDrainage is { } dry
                        ? $"{DrainageTolerance.Classes[wet]} to {DrainageTolerance.Classes[dry]}"
                        : "none in common",
                    ("trait", "Drainage")
                ),
            .. Passes.Select(
                (p, i) =>
                    BlendFormulas
                        .All["blend-pass-diameters"]
                        .Line(
                            $"{Amounts.Print(p.LargestToSmallest, 2)}, at most {Amounts.Print(SeedPasses.MostDiameterRatio, 2)}",
                            ("pass", Amounts.Print(i + 1, 0)),
                            ("kinds", p.ToString()),
                            ("largest diameter", Amounts.Print(p.Largest, 2)),
                            ("smallest diameter", Amounts.Print(p.Smallest, 2))
                        )
            ),
            .. Fixing.Select(NitrogenLine),
            BlendFormulas.Sum("Nitrogen fixed", $"{NitrogenParts()}{Amounts.Print(NitrogenFixed, "lb/ac", 0)}"),
        ];

    private IEnumerable<StandMember> Fixing => facts.Members.Where(m => m.Kind.Nitrogen is not null);

    private static double NitrogenOf(StandMember member) =>
        BlendMath.NitrogenFixed(
            member.Share,
            BlendConstants.All["nitrogen-quarter-stand"],
            member.Kind.Nitrogen!.QuarterStand.PoundsPerAcre,
            member.Kind.Nitrogen.PureStand.PoundsPerAcre
        );

    private static WorkedLine NitrogenLine(StandMember member) =>
        BlendFormulas
            .All[member.Share <= BlendConstants.All["nitrogen-quarter-stand"] ? "blend-nitrogen-thin" : "blend-nitrogen"]
            .Line(
                $"{Amounts.Print(NitrogenOf(member), 1)} lb/ac",
                ("kind", member.Kind.ShortName),
                ("share", Amounts.Print(member.Share, 3)),
                ("thin stand", Amounts.Print(BlendConstants.All["nitrogen-quarter-stand"], 3)),
                ("figure for a thin stand", Amounts.Print(member.Kind.Nitrogen!.QuarterStand.PoundsPerAcre, 1)),
                ("figure for a full stand", Amounts.Print(member.Kind.Nitrogen.PureStand.PoundsPerAcre, 1))
            );

    private string NitrogenParts()
    {
        string parts = string.Join(" + ", Fixing.Select(m => Amounts.Print(NitrogenOf(m), 1)));
        return parts.Length == 0 ? "" : $"{parts} = ";
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
