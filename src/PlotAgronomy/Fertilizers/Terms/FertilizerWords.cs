namespace PlotAgronomy.Fertilizers;

/// <summary>Words of the trade for nutrients, compounds and materials; a plan file uses the same ones.</summary>
internal static class FertilizerWords
{
    internal static EnumWords<FertilizerSubstance> Substances { get; } = EnumWords<FertilizerSubstance>.FromNames();

    internal static EnumWords<ChemicalForm> Forms { get; } = EnumWords<ChemicalForm>.FromNames();

    internal static EnumWords<MaterialProperty> Properties { get; } = EnumWords<MaterialProperty>.FromNames();

    internal static EnumWords<PlantNutrient> Nutrients { get; } = EnumWords<PlantNutrient>.FromNames();

    /// <summary>Nutrients as a tag writes them.</summary>
    internal static EnumWords<PlantNutrient> Symbols { get; } =
        new(
            (PlantNutrient.Nitrogen, "N"),
            (PlantNutrient.Phosphate, "P2O5"),
            (PlantNutrient.Potash, "K2O"),
            (PlantNutrient.Sulfur, "S"),
            (PlantNutrient.Calcium, "Ca"),
            (PlantNutrient.Magnesium, "Mg"),
            (PlantNutrient.Boron, "B"),
            (PlantNutrient.Zinc, "Zn"),
            (PlantNutrient.Manganese, "Mn"),
            (PlantNutrient.Copper, "Cu"),
            (PlantNutrient.Iron, "Fe"),
            (PlantNutrient.Chlorine, "Cl")
        );

    /// <summary>The nutrient a tag's symbol stands for, or null.</summary>
    internal static PlantNutrient? NutrientOf(string symbol)
    {
        foreach (var (nutrient, word) in Symbols.All)
        {
            if (string.Equals(word, symbol, StringComparison.OrdinalIgnoreCase))
            {
                return nutrient;
            }
        }

        return null;
    }
}
