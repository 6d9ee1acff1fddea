namespace PlotAgronomy.Fertilizers;

/// <summary>How nutrients are written on a tag.</summary>
internal static class NutrientSymbols
{
    internal static string Of(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => "N",
            PlantNutrient.Phosphate => "P2O5",
            PlantNutrient.Potash => "K2O",
            PlantNutrient.Sulfur => "S",
            PlantNutrient.Calcium => "Ca",
            PlantNutrient.Magnesium => "Mg",
            PlantNutrient.Boron => "B",
            PlantNutrient.Zinc => "Zn",
            PlantNutrient.Manganese => "Mn",
            PlantNutrient.Copper => "Cu",
            PlantNutrient.Iron => "Fe",
            _ => "Cl",
        };

    internal static PlantNutrient? Find(string symbol)
    {
        foreach (var nutrient in Enum.GetValues<PlantNutrient>())
        {
            if (string.Equals(Of(nutrient), symbol, StringComparison.OrdinalIgnoreCase))
            {
                return nutrient;
            }
        }

        return null;
    }
}
