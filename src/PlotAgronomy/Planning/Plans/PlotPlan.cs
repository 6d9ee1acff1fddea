using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;
using PlotAgronomy.Blends;
using PlotAgronomy.Land;
using PlotAgronomy.Liming;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>One plot, one planting: what stands on the report, the tags and the tape.</summary>
/// <remarks>
/// <para><see cref="PlanSolver.Solve(PlotPlan)"/> asks every room about it. <c>plan with { PlantingDate = ... }</c> is another
/// plan, to see what a change would do.</para>
/// <para>A plan is only equal to itself. What is left out is not known, and no answer is made up for it.</para>
/// </remarks>
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

    /// <summary>Gets the laboratory's report as printed.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required SoilReport Report
    {
        get;
        init => field = Guard.NotNull(value, nameof(Report));
    }

    /// <summary>Gets the day of planting.</summary>
    public required DateOnly PlantingDate { get; init; }

    /// <summary>Gets how the ground is worked and the seed covered.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Unknown method.</exception>
    public required PlantingMethod Method
    {
        get;
        init => field = Guard.Defined(value, nameof(Method));
    }

    /// <summary>Gets the kinds to be grown, each once, with the lot each is taken from; at least one.</summary>
    /// <exception cref="ArgumentException">No kind, a kind twice, or a kind with a lot of another.</exception>
    public required ImmutableArray<PlannedKind> Kinds
    {
        get;
        init => field = Guarded(value, nameof(Kinds));
    }

    /// <summary>Gets the method that turns the report into a rate of lime.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required LimeMethod LimeMethod
    {
        get;
        init => field = Guard.NotNull(value, nameof(LimeMethod));
    }

    /// <summary>Gets the system that turns the report into rates of phosphate and potash.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required RecommendationSystem NutrientSystem
    {
        get;
        init => field = Guard.NotNull(value, nameof(NutrientSystem));
    }

    /// <summary>Gets the spreader.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required PlannedSpreader Spreader
    {
        get;
        init => field = Guard.NotNull(value, nameof(Spreader));
    }

    /// <summary>Gets the one currency of all prices.</summary>
    /// <exception cref="ArgumentNullException">Null.</exception>
    public required Currency Currency
    {
        get;
        init => field = Guard.NotNull(value, nameof(Currency));
    }

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

    /// <summary>Gets the soil: what the report says, joined with what was seen on the plot.</summary>
    public PlotSoil Soil => PlotSoil.For(Report, Plot);

    /// <summary>Gets the kinds that are offered in more than one lot of seed, in the order of the offers.</summary>
    public ImmutableArray<CropKind> KindsInSeveralLots =>
        [.. SeedOffers.GroupBy(o => o.Item.Kind.Id).Where(g => g.Count() > 1).Select(g => g.First().Item.Kind)];

    /// <summary>Gets the way of sowing that rates are looked up by.</summary>
    public SowingMethod SowingMethod => SowingMethodOf(Method);

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
        string.Create(CultureInfo.InvariantCulture, $"{Plot}, planting of {PlantingDate:yyyy-MM-dd}");

    internal static SowingMethod SowingMethodOf(PlantingMethod method) =>
        method switch
        {
            PlantingMethod.Drilled => SowingMethod.Drilled,
            PlantingMethod.FrostSeeded => SowingMethod.FrostSeeded,
            PlantingMethod.TilledAndPacked => SowingMethod.Broadcast,
            _ => SowingMethod.BroadcastUnderCover,
        };

    private static ImmutableArray<PlannedKind> Guarded(ImmutableArray<PlannedKind> kinds, string name)
    {
        Guard.NotEmpty(Guard.Listed(kinds, name), name);
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
