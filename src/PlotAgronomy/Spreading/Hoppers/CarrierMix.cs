using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Spreading;

/// <summary>Seed and carrier that together leave the hopper at a steady flow.</summary>
/// <remarks>Smallest bulk rate = smallest steady flow x 495 / (speed x swath); carrier = bulk rate - seed rate. Parts by weight =
/// carrier / seed; by volume = that x seed bulk density / carrier bulk density. Algebra; the gate is set with the blend, never
/// with the seed alone.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class CarrierMix : IWorkedResult
{
    internal CarrierMix() { }

    /// <summary>Gets the carrier.</summary>
    public required Carrier Carrier { get; init; }

    /// <summary>Gets the rate of the seed.</summary>
    public required ApplicationRate SeedRate { get; init; }

    /// <summary>Gets the rate of the carrier; zero when the seed alone flows steadily.</summary>
    public required ApplicationRate CarrierRate { get; init; }

    /// <summary>Gets the rate to calibrate: seed and carrier together.</summary>
    public ApplicationRate BlendRate => SeedRate + CarrierRate;

    /// <summary>Gets the part of the blend that is seed, by weight.</summary>
    internal Fraction SeedShare => Fraction.FromValue(SeedRate / BlendRate);

    /// <summary>Gets parts of carrier to one of seed by weight; a pure number.</summary>
    public double PartsByWeight => CarrierRate / SeedRate;

    /// <summary>Gets parts of carrier to one of seed by volume, a pure number; null when a bulk density is not known.</summary>
    public double? PartsByVolume { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(Remarks());

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => [.. SpreadingFormulas.UnitSources, .. Carrier.Origin.Sources];

    /// <summary>Amount of carrier that brings a seed up to the smallest steady flow.</summary>
    /// <param name="seedRate">Rate of the seed; above 0.</param>
    /// <param name="smallestFlow">Smallest flow at which the machine feeds the blend steadily; above 0.</param>
    /// <param name="speed">Ground speed; above 0.</param>
    /// <param name="swath">Effective swath; above 0.</param>
    /// <param name="carrier">Carrier; an unfit one carries a warning.</param>
    /// <param name="seedBulk">Bulk density of the seed; above 0, or null.</param>
    /// <param name="carrierBulk">Bulk density of the carrier; above 0, or null. Weigh a quart of each.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static CarrierMix ForSteadyFlow(
        ApplicationRate seedRate,
        MassFlow smallestFlow,
        Speed speed,
        Length swath,
        Carrier carrier,
        Density? seedBulk = null,
        Density? carrierBulk = null
    )
    {
        double seed = Guard.Above(seedRate.PoundsPerAcre, 0, "lb/ac", nameof(seedRate));
        var setting = SpreaderSetting.FromFlow(smallestFlow, speed, swath);
        double bulk = setting.Rate.PoundsPerAcre;
        return Plan(seedRate, Math.Max(0, bulk - seed), carrier, seedBulk, carrierBulk, setting);
    }

    /// <summary>A blend of given parts.</summary>
    /// <param name="seedRate">Rate of the seed; above 0.</param>
    /// <param name="partsByWeight">Parts of carrier to one of seed by weight; a pure number of at least 0.</param>
    /// <param name="carrier">Carrier; an unfit one carries a warning.</param>
    /// <param name="seedBulk">Bulk density of the seed; above 0, or null.</param>
    /// <param name="carrierBulk">Bulk density of the carrier; above 0, or null.</param>
    /// <returns>The plan.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static CarrierMix ForParts(
        ApplicationRate seedRate,
        double partsByWeight,
        Carrier carrier,
        Density? seedBulk = null,
        Density? carrierBulk = null
    ) =>
        Plan(
            seedRate,
            Guard.Above(seedRate.PoundsPerAcre, 0, "lb/ac", nameof(seedRate)) * Guard.AtLeast(partsByWeight, 0, "parts"),
            carrier,
            seedBulk,
            carrierBulk
        );

    /// <summary>Parts by weight of parts by volume.</summary>
    /// <param name="partsByVolume">Parts of carrier to one of seed by volume; a pure number of at least 0.</param>
    /// <param name="seedBulk">Bulk density of the seed; above 0.</param>
    /// <param name="carrierBulk">Bulk density of the carrier; above 0.</param>
    /// <returns>Parts by weight; a pure number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    internal static double PartsByWeightOf(double partsByVolume, Density seedBulk, Density carrierBulk)
    {
        Guard.AtLeast(partsByVolume, 0, "parts");
        return partsByVolume * Positive(carrierBulk, nameof(carrierBulk)) / Positive(seedBulk, nameof(seedBulk));
    }

    /// <summary>Seed to weigh out for a plot.</summary>
    /// <param name="plot">Plot area; at least 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative area.</exception>
    internal Mass SeedFor(Area plot) => SeedRate.Over(plot);

    /// <summary>Carrier to weigh out for a plot.</summary>
    /// <param name="plot">Plot area; at least 0.</param>
    /// <returns>The weight.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A negative area.</exception>
    internal Mass CarrierFor(Area plot) => CarrierRate.Over(plot);

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SpreadingFormulas
                .All["spread-rate-with-carrier"]
                .Line(
                    $"{Amounts.Print(BlendRate.PoundsPerAcre, 3)} lb/ac",
                    ("seed rate", Amounts.Print(SeedRate.PoundsPerAcre, 3)),
                    ("carrier rate", Amounts.Print(CarrierRate.PoundsPerAcre, 3))
                ),
            SpreadingFormulas
                .All["spread-carrier-parts"]
                .Line(
                    Amounts.Print(PartsByWeight, 2),
                    ("carrier rate", Amounts.Print(CarrierRate.PoundsPerAcre, 3)),
                    ("seed rate", Amounts.Print(SeedRate.PoundsPerAcre, 3))
                ),
        ];

    private static CarrierMix Plan(
        ApplicationRate seedRate,
        double carrierPoundsPerAcre,
        Carrier carrier,
        Density? seedBulk,
        Density? carrierBulk,
        SpreaderSetting? setting = null
    )
    {
        ArgumentNullException.ThrowIfNull(carrier);
        double? seedDensity = seedBulk is { } s ? Positive(s, nameof(seedBulk)) : null;
        double? carrierDensity = carrierBulk is { } c ? Positive(c, nameof(carrierBulk)) : null;
        return new()
        {
            Carrier = carrier,
            Setting = setting,
            SeedRate = seedRate,
            CarrierRate = ApplicationRate.FromPoundsPerAcre(carrierPoundsPerAcre),
            PartsByVolume =
                seedDensity is { } ofSeed && carrierDensity is { } ofCarrier
                    ? carrierPoundsPerAcre / seedRate.PoundsPerAcre * ofSeed / ofCarrier
                    : null,
        };
    }

    /// <summary>The smallest steady flow at its pace and swath; null for a blend of given parts.</summary>
    private SpreaderSetting? Setting { get; init; }

    private IEnumerable<Finding> Remarks()
    {
        foreach (var finding in Setting?.Findings ?? [.. SpreadingPlausibility.Of(rate: BlendRate)])
        {
            yield return finding;
        }

        if (CarrierRate == ApplicationRate.Zero)
        {
            yield return FindingCatalog.Create(SpreadingCodes.NoCarrierNeeded);
            yield break;
        }

        yield return FindingCatalog.Create(SpreadingCodes.CalibrateBlend);
        if (!Carrier.IsFit)
        {
            yield return FindingCatalog.Create(SpreadingCodes.CarrierUnfit, ("carrier", Carrier.Name), ("why", Carrier.Remark));
        }

        if (Carrier.IsFeed)
        {
            yield return FindingCatalog.Create(SpreadingCodes.CarrierFeed, ("carrier", Carrier.Name));
        }
    }

    private static double Positive(Density density, string name)
    {
        double poundsPerCubicFoot = density.PoundsPerCubicFoot;
        return Guard.Above(poundsPerCubicFoot, 0, "lb/ft3", name);
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
