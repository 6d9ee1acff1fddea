using System.Collections.Immutable;

namespace PlotAgronomy.Fertilizers;

/// <summary>Why no set of the shelf's products fits: needs and caps that cannot all be kept, none of them without part in
/// it.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class NutrientConflict
{
    internal NutrientConflict() { }

    /// <summary>Gets the nutrients whose need takes part.</summary>
    public required ImmutableArray<PlantNutrient> Needs { get; init; }

    /// <summary>Gets the nutrients whose cap takes part; empty when the shelf simply does not hold what is needed.</summary>
    public required ImmutableArray<PlantNutrient> Caps { get; init; }

    /// <summary>Gets a value indicating whether the salt limit of the seed row takes part.</summary>
    public required bool IncludesSeedRow { get; init; }

    /// <summary>Gets the material of the catalog whose addition would make a plan fit, the one needed in the least weight; null
    /// when no single one does.</summary>
    public required FertilizerMaterial? Remedy { get; init; }

    /// <summary>The conflict in words.</summary>
    /// <returns>Text such as <c>phosphate cannot be met within the cap on nitrogen</c>.</returns>
    public override string ToString()
    {
        string caps = string.Join(
            " and ",
            (
                (string[])
                    [Caps.IsEmpty ? "" : $"the cap on {Words(Caps)}", IncludesSeedRow ? "the salt limit of the seed row" : ""]
            ).Where(c => c.Length > 0)
        );
        return $"{Words(Needs)} cannot be met " + (caps.Length == 0 ? "from this shelf" : $"within {caps}");
    }

    private static string Words(ImmutableArray<PlantNutrient> nutrients) =>
        string.Join(" and ", nutrients.Select(n => PlantNutrients.Names[n]));
}
