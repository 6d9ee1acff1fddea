using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>What is known of the field and the way the fertilizer goes on, as far as cautions ask.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class FieldConditions
{
    /// <summary>Gets conditions of which nothing is known: cautions that could apply are given.</summary>
    public static FieldConditions Unknown { get; } = new();

    /// <summary>Gets a value indicating whether a stand of legumes grows there or is being sown alone; null when
    /// unknown.</summary>
    public bool? IsLegumeStand { get; init; }

    /// <summary>Gets a value indicating whether the fertilizer is worked into the soil on the day; null when unknown.</summary>
    public bool? IsIncorporated { get; init; }

    /// <summary>Gets a value indicating whether it goes into the row in contact with the seed.</summary>
    public bool TouchesSeed { get; init; }

    /// <summary>Gets the salt limit of the seed row when all of the fertilizer goes there with the seed, or null. It becomes a
    /// cap of the
    /// plan, and urea, UAN and thiosulfate are left out. It must state a rate of its own.</summary>
    public SeedPlacedLimit? SeedRowLimit { get; init; }

    /// <summary>Gets the temperature of the soil surface, or null when unknown.</summary>
    public Temperature? SoilTemperature { get; init; }

    /// <summary>Gets the soil (urea loses more where the pH in water is high), or null; a report will do.</summary>
    public PlotSoil? Soil { get; init; }

    /// <summary>Gets a value indicating whether inoculated seed is mixed or drilled with the fertilizer.</summary>
    public bool TouchesInoculatedSeed { get; init; }

    /// <summary>Gets a value indicating whether surface water is near; null when unknown.</summary>
    public bool? IsNearWater { get; init; }

    /// <summary>Gets a value indicating whether the need comes from a soil test; false warns that the rate cannot be
    /// judged.</summary>
    public bool HasSoilTest { get; init; } = true;

    /// <summary>Nutrients that nobody has a figure for: that one comes along is said.</summary>
    internal ImmutableArray<PlantNutrient> NotKnown { get; init; } = [];

    /// <summary>Nitrogen that the season needs in all, where part of it is given to the stand; or null.</summary>
    internal ApplicationRate? SeasonNitrogen { get; init; }

    /// <summary>What is known of the field.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.Join(", ", Known.DefaultIfEmpty("nothing known"));

    private IEnumerable<string> Known =>
        new[]
        {
            Soil?.ToString(),
            Said(IsLegumeStand, "a stand of legumes", "no stand of legumes"),
            Said(IsIncorporated, "worked in", "left on the surface"),
            Said(IsNearWater, "near water", "not near water"),
            TouchesSeed ? "touching the seed" : null,
        }.OfType<string>();

    private static string? Said(bool? known, string yes, string no) =>
        known switch
        {
            true => yes,
            false => no,
            null => null,
        };
}
