using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using PlotAgronomy.Blends;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>One plot, one planting: what stands on the report, the tags and the tape.</summary>
/// <remarks>
/// <para><see cref="PlanSolver.Solve(PlotPlan)"/> asks every room about it. <c>plan with { PlantingDate = ... }</c> is another
/// plan, to see what a change would do.</para>
/// <para>A plan is only equal to itself. What is left out is not known, and no answer is made up for it.</para>
/// </remarks>
/// <example>
/// <code>
/// var clover = KindCatalog.Standard.Find("crimson clover");
/// var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(85));
/// var lot = new SeedLot { Kind = clover, Label = "C-3", Analysis = tag };
/// var offer = Offer.InBags(lot, Mass.FromPounds(25), pricePerBag: 68);
/// var plan = new PlotPlan
/// {
///     Plot = new Plot { Name = "Fern Bottom", Measured = PlotArea.FromRectangle(Length.FromFeet(182), Length.FromFeet(140)) },
///     Report = new SoilReport { Laboratory = "state", WaterPh = WaterPh.FromValue(6.3) },
///     Kinds = [new PlannedKind { Share = KindShare.FromShare(clover, 1), Offer = offer }],
/// };
/// var later = plan with { PlantingDate = new DateOnly(2026, 9, 12) };
/// Console.WriteLine(FieldSheet.Of(later.Solve()).Title);
/// // Fern Bottom: planting of 2026-09-12
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed record PlotPlan
{
    /// <summary>Gets the plot.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required Plot Plot
    {
        get;
        init => field = Guard.NotNull(value, nameof(Plot));
    }

    /// <summary>Gets the laboratory's report as printed; null without one, and then the answers say how to take the
    /// sample.</summary>
    public SoilReport? Report { get; init; }

    /// <summary>Gets a pH read by oneself with a strip or a meter; null when none was. It gives a range of lime, never an
    /// order.</summary>
    public HomePh? HomePh { get; init; }

    /// <summary>Gets the day of planting; null while it is not set.</summary>
    public DateOnly? PlantingDate { get; init; }

    /// <summary>Gets how the ground is worked and the seed covered; null while it is not settled.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public PlantingMethod? Method
    {
        get;
        init => field = Guard.Defined(value, nameof(Method));
    }

    /// <summary>Gets the kinds to be sown, each once, with the lot each is taken from.</summary>
    /// <value>None unless stated: then what stands on the plot is kept up.</value>
    /// <exception cref="ArgumentException">A list that was never made, a kind twice, or a kind with a lot of another.</exception>
    public ImmutableArray<PlannedKind> Kinds
    {
        get;
        init => field = Guarded(value, nameof(Kinds));
    } = [];

    /// <summary>Gets the method that turns the report into a rate of lime; null lets the laboratory or the place choose, and
    /// the answers say which.</summary>
    public LimeMethod? LimeMethod { get; init; }

    /// <summary>Gets the system that turns the report into rates of phosphate and potash; null lets the laboratory or the place
    /// choose, and the answers say which.</summary>
    public RecommendationSystem? NutrientSystem { get; init; }

    /// <summary>Gets the spreader; null where no seed is spread, or none is at hand yet.</summary>
    public PlannedSpreader? Spreader { get; init; }

    /// <summary>Gets the one currency of all prices.</summary>
    /// <value>One without a name unless stated: prices are then plain numbers.</value>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public Currency Currency
    {
        get;
        init => field = Guard.NotNull(value, nameof(Currency));
    } = Currency.Unnamed;

    /// <summary>Gets the owner's own pace, by which sides were paced; null when nothing was.</summary>
    public PaceCalibration? Pace { get; init; }

    /// <summary>Gets the day the lime is spread; null leaves the pH on planting day open.</summary>
    public DateOnly? LimeDate { get; init; }

    /// <summary>Gets the depth to which the ground is worked and lime mixed in; above 0 and less than lime can be counted
    /// for.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0, or too deep.</exception>
    public Length? TillageDepth
    {
        get;
        init
        {
            if (value is { } depth)
            {
                double inches = depth.Inches;
                Guard.Inside(inches, 0, MostTillageInches, "in", nameof(TillageDepth));
            }

            field = value;
        }
    }

    /// <summary>Gets what the laboratory itself recommended, which is used first; null when it printed nothing.</summary>
    public PrintedAdvice? Printed { get; init; }

    /// <summary>Gets lime from before the sample was taken, or null.</summary>
    public EarlierLime? EarlierLime { get; init; }

    /// <summary>Gets the lime spread since the sample was taken, counted in the lime of the rate; it is taken off what the sample
    /// asks for. Null where none was.</summary>
    public ApplicationRate? LimeSinceSample { get; init; }

    /// <summary>Gets the years over which a poor soil is built up; null takes the system's own (Missouri: 4 or 8 for
    /// phosphorus).</summary>
    public int? BuildUpYears { get; init; }

    /// <summary>Gets the published nitrogen credit for a legume that stands or grew there, or null.</summary>
    public LegumeCredit? LegumeCredit { get; init; }

    /// <summary>Gets the pH to aim at, 4 to 9, in place of what the kinds ask for; or null.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 4 to 9.</exception>
    public double? StatedTargetPh
    {
        get;
        init => field = value is { } ph ? LimeLimits.TargetPh(ph, nameof(StatedTargetPh)) : null;
    }

    /// <summary>Gets the liming materials on offer.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<Offer<LimingMaterial>> LimeOffers
    {
        get;
        init => field = Guard.Listed(value, nameof(LimeOffers));
    } = [];

    /// <summary>Gets the fertilizers on offer.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<Offer<FertilizerProduct>> FertilizerOffers
    {
        get;
        init => field = Guard.Listed(value, nameof(FertilizerOffers));
    } = [];

    /// <summary>Gets every lot of seed on offer, to be compared with those that are sown.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<Offer<SeedLot>> SeedOffers
    {
        get;
        init => field = Guard.Listed(value, nameof(SeedOffers));
    } = [];

    /// <summary>Gets the store's ready blends on offer, to be compared with plain seed.</summary>
    /// <value>None unless stated.</value>
    /// <exception cref="ArgumentException">A list that was never made, or with a null in it.</exception>
    public ImmutableArray<Offer<StoreBlend>> StoreBlends
    {
        get;
        init => field = Guard.Listed(value, nameof(StoreBlends));
    } = [];

    /// <summary>Gets what is known of place, frost and weeds; null where nothing is.</summary>
    public PlotSeason? Season { get; init; }

    /// <summary>Gets the soil: what the report says, joined with what was seen on the plot.</summary>
    public PlotSoil Soil => PlotSoil.For(ReportOrNone, Plot);

    /// <summary>Gets the kinds that are offered in more than one lot of seed, in the order of the offers.</summary>
    public ImmutableArray<CropKind> KindsInSeveralLots =>
        [.. SeedOffers.GroupBy(o => o.Item.Kind.Id).Where(g => g.Count() > 1).Select(g => g.First().Item.Kind)];

    /// <summary>Gets the way of sowing that rates are looked up by; null while the method is not settled.</summary>
    public SowingMethod? SowingMethod => Method is { } method ? SowingMethodOf(method) : null;

    /// <summary>The way of sowing that offers are compared by; broadcast while the method is not settled, and the comparison says
    /// so.</summary>
    internal SowingMethod ComparedMethod => SowingMethod ?? PlotAgronomy.SowingMethod.Broadcast;

    /// <summary>The report, or one that prints nothing.</summary>
    internal SoilReport ReportOrNone => Report ?? SoilReport.None;

    /// <summary>Whether a laboratory saw the soil: its readings are in the plan, or what it recommends.</summary>
    internal bool IsTested => ReportOrNone.PrintsReadings || Printed is not null;

    /// <summary>Whether the ground is known to stay as it is, so that what is spread lies on top.</summary>
    internal bool IsUnworked => Method is not (null or PlantingMethod.TilledAndPacked);

    /// <summary>Lime is counted for soil worked less deep than this.</summary>
    internal static double MostTillageInches => SoilConstants.All["treated-depth-high"];

    /// <summary>Whether this is the very same plan.</summary>
    /// <param name="other">Other plan.</param>
    /// <returns>True for the same object.</returns>
    public bool Equals(PlotPlan? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>The plot and the day of planting.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        PlantingDate is { } day
            ? string.Create(CultureInfo.InvariantCulture, $"{Plot}, planting of {day:yyyy-MM-dd}")
            : $"{Plot}, planting day not set";

    internal static SowingMethod SowingMethodOf(PlantingMethod method) =>
        method switch
        {
            PlantingMethod.Drilled => PlotAgronomy.SowingMethod.Drilled,
            PlantingMethod.FrostSeeded => PlotAgronomy.SowingMethod.FrostSeeded,
            PlantingMethod.TilledAndPacked => PlotAgronomy.SowingMethod.Broadcast,
            _ => PlotAgronomy.SowingMethod.BroadcastUnderCover,
        };

    private static ImmutableArray<PlannedKind> Guarded(ImmutableArray<PlannedKind> kinds, string name)
    {
        Guard.Listed(kinds, name);
        if (kinds.FirstOrDefault(k => k.Offer.Item.Kind.Id != k.Kind.Id) is { } mixed)
        {
            throw new ArgumentException(
                $"{mixed.Kind.CommonName} cannot be taken from a lot of {mixed.Offer.Item.Kind.CommonName}.",
                name
            );
        }

        return kinds.GroupBy(k => k.Kind.Id).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? throw new ArgumentException($"{twice.First().Kind.CommonName} stands twice.", name)
            : kinds;
    }
}
