using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A nutrient a system does not answer for on this report, why, and which systems would.</summary>
public sealed class UnansweredNutrient
{
    /// <summary>Gets the nutrient.</summary>
    public required PlantNutrient Nutrient { get; init; }

    /// <summary>Gets the reason in one sentence.</summary>
    public required string Reason { get; init; }

    /// <summary>Gets the ids of the systems that take this crop row and the report's test; empty when none does.</summary>
    public required ImmutableArray<string> ServedBy { get; init; }

    /// <summary>Gets the rating, when the system rates the reading but prints no rate.</summary>
    public NutrientRating? Rating { get; init; }

    /// <summary>Gets the same as a remark for the sheet, with the systems that would serve.</summary>
    public required Finding Finding { get; init; }

    /// <summary>Nutrient and reason.</summary>
    /// <returns>Text such as <c>K2O: ...</c>.</returns>
    public override string ToString() => $"{SoilWords.For(Nutrient)}: {Reason}";

    internal static UnansweredNutrient By(
        string system,
        PlantNutrient nutrient,
        string code,
        string reason,
        ImmutableArray<string> others,
        NutrientRating? rating
    ) =>
        new()
        {
            Nutrient = nutrient,
            Reason = reason,
            ServedBy = others,
            Rating = rating,
            Finding = FindingCatalog.Create(
                code,
                ("system", system),
                ("nutrient", SoilWords.For(nutrient)),
                ("reason", reason),
                ("others", others.IsEmpty ? "none of this library's systems" : string.Join(", ", others))
            ),
        };
}
