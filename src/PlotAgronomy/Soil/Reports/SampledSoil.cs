using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>What a conversion between units needs to know of the soil. What is null is not known, and a conversion that
/// needs it says so.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SampledSoil
{
    /// <summary>Gets a soil of which nothing but the furrow slice convention is known.</summary>
    public static SampledSoil Conventional { get; } = new() { Layer = SampledLayer.FurrowSlice };

    /// <summary>Gets the sampled layer, for lb/ac and kg/ha.</summary>
    public SampledLayer? Layer { get; init; }

    /// <summary>Gets the weight per volume of the scooped soil, between mg/dm3 and ppm.</summary>
    public Density? WeightPerVolume { get; init; }

    /// <summary>Gets the cation exchange capacity, for percent saturation.</summary>
    public CationCharge? ExchangeCapacity { get; init; }

    /// <summary>The soil as a report describes it: W/V and exchange capacity as printed, lb/ac by the furrow slice that
    /// laboratories
    /// double ppm for, whatever the depth sampled.</summary>
    /// <param name="report">Report.</param>
    /// <returns>The soil.</returns>
    public static SampledSoil For(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new SampledSoil
        {
            Layer = report.SampledDepth is null ? null : SampledLayer.FurrowSlice,
            WeightPerVolume = report.WeightPerVolume,
            ExchangeCapacity = report.PrintedExchangeCapacity,
        };
    }

    /// <summary>What is known of the sample.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        string.Join(
            ", ",
            new object?[] { Layer, WeightPerVolume is { } weight ? Amounts.Print(weight, "g/cm3", 2) : null, ExchangeCapacity }
                .OfType<object>()
                .DefaultIfEmpty("a sample of which nothing is known")
        );
}
