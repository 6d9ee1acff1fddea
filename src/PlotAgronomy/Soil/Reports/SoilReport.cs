using System.Collections.Immutable;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy;

/// <summary>A laboratory's soil report as printed. What the report does not print is null, never zero.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SoilReport
{
    /// <summary>Gets the institution that ran the test, such as a state laboratory.</summary>
    public required string Laboratory { get; init; }

    /// <summary>Gets the program whose ratings the report follows, when it names one other than the laboratory's own.</summary>
    public string? Program { get; init; }

    /// <summary>Gets the readings in the order of the report.</summary>
    public ImmutableArray<SoilReading> Readings { get; init; } = [];

    /// <summary>Gets the pH in water.</summary>
    public WaterPh? WaterPh { get; init; }

    /// <summary>Gets the pH in a salt solution.</summary>
    public SaltPh? SaltPh { get; init; }

    /// <summary>Gets the buffer pH, or several when more than one buffer was run.</summary>
    public ImmutableArray<BufferPh> BufferPhs { get; init; } = [];

    /// <summary>Gets the exchangeable (neutralizable) acidity as printed.</summary>
    public CationCharge? ExchangeableAcidity { get; init; }

    /// <summary>Gets the cation exchange capacity as printed.</summary>
    public CationCharge? PrintedExchangeCapacity { get; init; }

    /// <summary>Gets the base saturation as printed.</summary>
    public Fraction? PrintedBaseSaturation { get; init; }

    /// <summary>Gets the organic matter as printed.</summary>
    public Fraction? OrganicMatter { get; init; }

    /// <summary>Gets the humic matter as printed (North Carolina).</summary>
    public Fraction? HumicMatter { get; init; }

    /// <summary>Gets the weight per volume of the scooped soil (W/V).</summary>
    public Density? WeightPerVolume { get; init; }

    /// <summary>Gets the depth that was sampled.</summary>
    public Length? SampledDepth { get; init; }

    /// <summary>Gets the day the sample was taken.</summary>
    public DateOnly? SampledOn { get; init; }

    /// <summary>Gets the soil class as printed.</summary>
    public SoilClass? SoilClass { get; init; }

    /// <summary>Gets the texture, when it is known.</summary>
    public SoilTexture? Texture { get; init; }

    /// <summary>Finds the first reading of an analyte.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <returns>The reading, or null when the report does not print one.</returns>
    public SoilReading? Find(SoilAnalyte analyte) => FindAll(analyte).FirstOrDefault();

    /// <summary>Finds the reading of an analyte by one extractant.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <param name="extractant">Extractant.</param>
    /// <returns>The reading, or null when the report does not print one.</returns>
    public SoilReading? Find(SoilAnalyte analyte, Extractant extractant) =>
        FindAll(analyte).FirstOrDefault(r => r.Extractant == Guard.Defined(extractant));

    /// <summary>Finds every reading of an analyte, in the order of the report.</summary>
    /// <param name="analyte">What was measured.</param>
    /// <returns>The readings; empty when there is none.</returns>
    public ImmutableArray<SoilReading> FindAll(SoilAnalyte analyte)
    {
        Guard.Defined(analyte);
        return [.. Readings.Where(r => r.Analyte == analyte)];
    }

    /// <summary>Finds the reading in one buffer.</summary>
    /// <param name="buffer">Buffer.</param>
    /// <returns>The buffer pH, or null when that buffer was not run.</returns>
    public BufferPh? FindBuffer(SoilBuffer buffer)
    {
        Guard.Defined(buffer);
        return BufferPhs.FirstOrDefault(b => b.Buffer == buffer);
    }
}
