using System.Collections.Immutable;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A test a system was made for: nutrient, crop rows, extractants and unit.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class AcceptedTest
{
    internal AcceptedTest() { }

    /// <summary>Gets the nutrient the system answers for.</summary>
    public required PlantNutrient Nutrient { get; init; }

    /// <summary>Gets the crop rows the system has.</summary>
    public required ImmutableArray<CropRow> Crops { get; init; }

    /// <summary>Gets the extractants it was made for.</summary>
    public required ImmutableArray<Extractant> Extractants { get; init; }

    /// <summary>Gets the unit its numbers are in. A reading in another unit is converted where a definition allows.</summary>
    public required SoilTestUnit Unit { get; init; }

    /// <summary>Gets the element the report must hold.</summary>
    public SoilAnalyte Analyte => Nutrient == PlantNutrient.Phosphate ? SoilAnalyte.Phosphorus : SoilAnalyte.Potassium;

    /// <summary>Test and unit in words.</summary>
    /// <returns>Text such as <c>phosphorus by Mehlich-3 in ppm</c>.</returns>
    public override string ToString() => $"{SoilWords.For(Analyte)} by {SoilWords.Or(Extractants)} in {SoilWords.For(Unit)}";
}
