using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>A soil report and what else a lime method may need. What is not known is null, never zero.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeSample
{
    /// <summary>Gets the report: pH, buffer pH, exchangeable acidity, CEC, aluminum, texture and soil class.</summary>
    public required SoilReport Report { get; init; }

    /// <summary>Gets a buffer pH that stands on the report without the name of its buffer. It is never used; it only tells why
    /// there is no answer.</summary>
    public double? UnnamedBufferPh { get; init; }

    /// <summary>Gets Georgia's lime buffer capacity.</summary>
    public LimeBufferCapacity? LimeBufferCapacity { get; init; }

    /// <summary>Takes a report as it is.</summary>
    /// <param name="report">Report.</param>
    /// <returns>The sample.</returns>
    public static LimeSample From(SoilReport report)
    {
        ArgumentNullException.ThrowIfNull(report);
        return new LimeSample { Report = report };
    }

    internal double? WaterPh => Report.WaterPh?.Value;

    /// <summary>The class printed; else organic above 20 % organic matter (LIME-S1), else mineral.</summary>
    internal SoilClass Class =>
        Report.SoilClass
        ?? (Report.OrganicMatter?.Percent > LimingConstants.All["organic-from"] ? SoilClass.Organic : SoilClass.Mineral);

    internal double? AcidityPer100Grams =>
        Report.ExchangeableAcidity switch
        {
            { Basis: CationChargeBasis.Per100Grams } acidity => acidity.Milliequivalents,
            { } acidity when Report.WeightPerVolume is { } weight => acidity.ByWeight(weight).Milliequivalents,
            _ => null,
        };

    internal double? AcidityPer100CubicCentimeters =>
        Report.ExchangeableAcidity is { Basis: CationChargeBasis.Per100CubicCentimeters } acidity
            ? acidity.Milliequivalents
            : null;

    /// <summary>Low CEC; without a CEC on the report, sand and loamy sand (common practice).</summary>
    internal bool IsWeaklyBuffered =>
        Capacity is { } capacity
            ? capacity < LimingConstants.All["weak-cec-limit"]
            : Report.Texture is SoilTexture.Sand or SoilTexture.LoamySand;

    /// <summary>By weight; a CEC by volume without its weight is taken as it stands, a scoop weighing about 1 g/cm3 (common
    /// practice).</summary>
    internal double? Capacity =>
        Report.PrintedExchangeCapacity switch
        {
            { Basis: CationChargeBasis.Per100Grams } capacity => capacity.Milliequivalents,
            { } capacity when Report.WeightPerVolume is { } weight => capacity.ByWeight(weight).Milliequivalents,
            { } capacity => capacity.Milliequivalents,
            null => null,
        };

    internal double? AluminumPpm =>
        Report.Find(SoilAnalyte.Aluminum) is { Unit: SoilTestUnit.PartsPerMillion } reading ? reading.PrintedValue : null;
}
