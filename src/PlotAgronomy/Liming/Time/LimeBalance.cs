using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Liming;

/// <summary>The account of one plot: what it needs, what has gone on, what is still owed, and what is above need.</summary>
/// <remarks>Masses are counted in the lime of the rate's basis. Every material counts by its own effectiveness; gypsum counts for
/// nothing.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeBalance : IWorkedResult
{
    private LimeBalance(
        LimeRate rate,
        Area area,
        ImmutableArray<LimeApplication> applied,
        ImmutableArray<LimeApplication> planned
    )
    {
        Rate = rate;
        Area = area;
        AppliedLime = applied;
        PlannedLime = planned;
        double acres = area.Acres;
        Need = Mass.FromPounds(LimeSums.ForArea(rate.OfBasis.PoundsPerAcre, acres, 0));
        Applied = Mass.FromPounds(LimeApplication.PoundsOfBasis(applied, rate));
        Planned = Mass.FromPounds(LimeApplication.PoundsOfBasis(planned, rate));
    }

    /// <summary>Gets the rate that is needed.</summary>
    public LimeRate Rate { get; }

    /// <summary>Gets the area.</summary>
    public Area Area { get; }

    /// <summary>Gets the applications that have gone on.</summary>
    public ImmutableArray<LimeApplication> AppliedLime { get; }

    /// <summary>Gets the applications that are planned besides.</summary>
    public ImmutableArray<LimeApplication> PlannedLime { get; }

    /// <summary>Gets the need, in the lime of the basis.</summary>
    public Mass Need { get; }

    /// <summary>Gets what has gone on, in the lime of the basis.</summary>
    public Mass Applied { get; }

    /// <summary>Gets what is planned besides, in the lime of the basis.</summary>
    public Mass Planned { get; }

    /// <summary>Gets the rate that has gone on, in the lime of the basis.</summary>
    public ApplicationRate AppliedRate => RateOnPlot(Mass.Zero);

    /// <summary>Gets the rate once the plan is carried out, in the lime of the basis.</summary>
    public ApplicationRate RateAfterPlan => RateOnPlot(Planned);

    /// <summary>Gets what is still owed before the plan, in the lime of the basis; zero when the need is met.</summary>
    public Mass StillOwed
    {
        get
        {
            double need = Need.Pounds;
            double applied = Applied.Pounds;
            return Mass.FromPounds(LimeTimes.StillOwed(need, applied));
        }
    }

    /// <summary>Gets by how many percent applied and planned lime together pass the need, at least 0; null when there is no need
    /// to pass.</summary>
    public double? AboveNeedPercent
    {
        get
        {
            double need = Need.Pounds;
            double applied = Applied.Pounds;
            double planned = Planned.Pounds;
            return need > 0 ? LimeTimes.AboveNeedPercent(need, applied, planned) : null;
        }
    }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(FindingsOf([.. AppliedLime, .. PlannedLime]));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => Rate.Basis.Origin.Sources;

    /// <summary>Draws up the account.</summary>
    /// <param name="rate">Rate that is needed.</param>
    /// <param name="area">Area; above 0.</param>
    /// <param name="applied">What has gone on.</param>
    /// <param name="planned">What is planned besides.</param>
    /// <returns>The account.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An area that is not above 0.</exception>
    /// <exception cref="InvalidOperationException">A material's figure in the index of the rate's basis is not known.</exception>
    public static LimeBalance For(
        LimeRate rate,
        Area area,
        IEnumerable<LimeApplication> applied,
        IEnumerable<LimeApplication>? planned = null
    )
    {
        ArgumentNullException.ThrowIfNull(rate);
        ArgumentNullException.ThrowIfNull(applied);
        double acres = area.Acres;
        Guard.Above(acres, 0, "ac", nameof(area));
        LimeApplication[] done = [.. applied],
            ahead = [.. planned ?? []];
        Guard.WithoutNulls(done, nameof(applied));
        Guard.WithoutNulls(ahead, nameof(planned));
        return new LimeBalance(rate, area, [.. done], [.. ahead]);
    }

    /// <summary>What is still owed, counted in a material.</summary>
    /// <param name="material">Material.</param>
    /// <returns>Its mass.</returns>
    /// <exception cref="InvalidOperationException">The material neutralizes nothing, or its figure is not known.</exception>
    internal Mass StillOwedOf(LimingMaterial material)
    {
        ArgumentNullException.ThrowIfNull(material);
        double owed = StillOwed.Pounds;
        return Mass.FromPounds(owed * Rate.FactorFor(material));
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            LimingFormulas
                .All["lime-for-area"]
                .Line(
                    $"{Amounts.Print(Need, "lb", 1)} of {Rate.Basis.Name}",
                    ("what", "Need"),
                    ("rate", Amounts.Print(Rate.OfBasis, "lb/ac", 1)),
                    ("area", Amounts.Print(Area, "ac", 3))
                )
                .From(Rate.Basis.Origin),
            RateLine("Applied, counted in that lime", AppliedRate, Mass.Zero),
            LimingFormulas
                .All["lime-still-owed"]
                .Line(
                    Amounts.Print(StillOwed, "lb", 1),
                    ("need", Amounts.Print(Need, "lb", 1)),
                    ("applied", Amounts.Print(Applied, "lb", 1))
                ),
            RateLine("After the plan", RateAfterPlan, Planned),
            .. AboveNeedPercent is > 0 and { } percent ? new[] { AboveNeedLine(percent) } : [],
        ];

    private ApplicationRate RateOnPlot(Mass planned)
    {
        double applied = Applied.Pounds;
        double more = planned.Pounds;
        double acres = Area.Acres;
        return ApplicationRate.FromPoundsPerAcre(LimeTimes.PoundsPerAcreOnPlot(applied, more, acres));
    }

    private WorkedLine RateLine(string what, ApplicationRate answer, Mass planned) =>
        LimingFormulas
            .All["lime-on-the-plot"]
            .Line(
                Amounts.Print(answer, "lb/ac", 1),
                ("what", what),
                ("applied", Amounts.Print(Applied, "lb", 1)),
                ("planned", Amounts.Print(planned, "lb", 1)),
                ("area", Amounts.Print(Area, "ac", 3))
            );

    private WorkedLine AboveNeedLine(double percent) =>
        LimingFormulas
            .All[LimingCodes.AboveNeed]
            .Line(
                $"{Amounts.Print(percent, 1)} %",
                ("applied", Amounts.Print(Applied, "lb", 1)),
                ("planned", Amounts.Print(Planned, "lb", 1)),
                ("need", Amounts.Print(Need, "lb", 1))
            );

    private IEnumerable<Finding> FindingsOf(ImmutableArray<LimeApplication> all)
    {
        double owed = StillOwed.Pounds;
        if (owed > Tolerance.Dust)
        {
            yield return FindingCatalog.Create(LimingCodes.BelowNeed, ("pounds", Amounts.Print(owed, 0)));
        }

        foreach (var surplus in LimeSurplus.Findings(AboveNeedPercent ?? 0))
        {
            yield return surplus;
        }

        foreach (var application in all.Where(a => !a.Material.Neutralizes))
        {
            yield return FindingCatalog.Create(LimingCodes.NoNeutralizingValue, ("material", application.Material.Name));
            double acres = Area.Acres;
            double sulfur = application.Mass.Pounds * LimingCompound.Gypsum.Sulfur.Value / acres;
            if (application.Material.Form == LimingForm.Gypsum && sulfur > LimingConstants.All["high-sulfur"])
            {
                yield return FindingCatalog.Create(LimingCodes.GypsumSulfur, ("pounds", Amounts.Print(sulfur, 0)));
            }
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
