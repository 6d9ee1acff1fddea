using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Facts some systems ask for that a soil report may not print. What is not known is null, and a system that
/// needs it says so.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlotSetting
{
    /// <summary>Gets a setting that knows nothing beyond the report.</summary>
    public static PlotSetting Unknown { get; } = new();

    /// <summary>Gets the soil class; null takes the report's.</summary>
    public SoilClass? SoilClass { get; init; }

    /// <summary>Gets the region of the southern states.</summary>
    public SoilRegion? Region { get; init; }

    /// <summary>Gets the cation exchange capacity to use; null takes the one the report prints by weight.</summary>
    public CationCharge? ExchangeCapacity { get; init; }

    /// <summary>Gets the state in which the sample was extracted (Iowa).</summary>
    public SampleMoisture? SampleMoisture { get; init; }

    /// <summary>Gets the phosphorus-supplying power of the subsoil (Illinois).</summary>
    public SoilSupply? PhosphorusSupply { get; init; }

    /// <summary>Gets whether the soil counts as one of low or high exchange capacity (Illinois); medium is not printed.</summary>
    public SoilSupply? ExchangeCapacityGroup { get; init; }

    /// <summary>Gets the years over which a poor soil is built up; null takes the system's own (Missouri: 4 or 8 for
    /// phosphorus).</summary>
    public int? BuildUpYears { get; init; }

    /// <summary>Gets the phosphorus rating as the laboratory printed it, such as <c>medium</c> (South Carolina, whose
    /// limits for phosphorus are not in this library).</summary>
    public string? PrintedPhosphorusRating { get; init; }

    /// <summary>Gets the potassium of a subsoil sample (South Carolina cuts the potash where the subsoil holds enough).</summary>
    public SoilReading? SubsoilPotassium { get; init; }
}
