namespace PlotAgronomy;

internal static class PlantNutrients
{
    internal static EnumWords<PlantNutrient> Names { get; } = EnumWords<PlantNutrient>.FromNames();

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
    internal static PlantNutrient? WithSymbol(string symbol)
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

    /// <summary>A nutrient within a sentence of a report: the three of a grade by symbol, the others by name.</summary>
    internal static string InSentence(PlantNutrient nutrient) =>
        nutrient is PlantNutrient.Nitrogen or PlantNutrient.Phosphate or PlantNutrient.Potash
            ? Symbols[nutrient]
            : Names[nutrient];

    /// <summary>Name and symbol, such as <c>phosphate (P2O5)</c>.</summary>
    internal static string InFull(PlantNutrient nutrient) => $"{Names[nutrient]} ({Symbols[nutrient]})";
}
