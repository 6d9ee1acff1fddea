using System.Collections.Immutable;
using System.Globalization;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What is known of the plot and of one sowing on it; what is not known is not checked.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BlendFitRequest
{
    /// <summary>Gets the soil (pH, drainage, whether it is dry or thin), or null; a report will do.</summary>
    public PlotSoil? Soil { get; init; }

    /// <summary>Gets the region, for planting dates, or null.</summary>
    public PlantingRegion? Region { get; init; }

    /// <summary>Gets the day of sowing, or null.</summary>
    public DateOnly? SowingDay { get; init; }

    /// <summary>Gets the nitrogen to be applied, as N; null when not decided.</summary>
    public ApplicationRate? NitrogenPlanned { get; init; }

    /// <summary>Gets a value indicating whether seed stays on the surface: broadcast and not covered.</summary>
    public bool IsSeedLeftOnSurface { get; init; }

    /// <summary>Gets a value indicating whether perennials are sown late in their season.</summary>
    public bool IsLateSeeding { get; init; }

    /// <summary>Gets what stands on the plot already.</summary>
    public ImmutableArray<KindShare> Standing
    {
        get;
        init => field = Guard.Listed(value, nameof(Standing));
    } = [];

    /// <summary>What is stated of the ground and the day.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(", ", Stated.DefaultIfEmpty("nothing stated"));

    private IEnumerable<string> Stated =>
        new[]
        {
            Soil?.ToString(),
            Region?.ToString(),
            SowingDay?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        }.OfType<string>();
}
