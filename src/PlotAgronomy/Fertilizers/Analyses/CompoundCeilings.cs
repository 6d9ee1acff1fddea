namespace PlotAgronomy.Fertilizers;

/// <summary>No grade can exceed the pure compound.</summary>
internal static class CompoundCeilings
{
    /// <summary>The pure salt behind a substance, where there is one.</summary>
    internal static ChemicalForm? PureCompound(FertilizerSubstance substance) =>
        substance switch
        {
            FertilizerSubstance.Urea => ChemicalForm.Urea,
            FertilizerSubstance.AmmoniumNitrate => ChemicalForm.AmmoniumNitrate,
            FertilizerSubstance.AmmoniumSulfate => ChemicalForm.AmmoniumSulfate,
            FertilizerSubstance.PotassiumNitrate => ChemicalForm.PotassiumNitrate,
            FertilizerSubstance.MonoammoniumPhosphate => ChemicalForm.MonoammoniumPhosphate,
            FertilizerSubstance.DiammoniumPhosphate => ChemicalForm.DiammoniumPhosphate,
            FertilizerSubstance.PotassiumChloride => ChemicalForm.PotassiumChloride,
            FertilizerSubstance.PotassiumSulfate => ChemicalForm.PotassiumSulfate,
            FertilizerSubstance.MonopotassiumPhosphate => ChemicalForm.MonopotassiumPhosphate,
            _ => null,
        };

    /// <summary>The richest form in which a nutrient is sold at all.</summary>
    internal static ChemicalForm RichestForm(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => ChemicalForm.Ammonia,
            PlantNutrient.Calcium => ChemicalForm.CalciumOxide,
            PlantNutrient.Magnesium => ChemicalForm.MagnesiumOxide,
            PlantNutrient.Boron => ChemicalForm.BoronOxide,
            PlantNutrient.Zinc => ChemicalForm.ZincOxide,
            _ => FormOf(nutrient),
        };

    internal static ChemicalForm FormOf(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => ChemicalForm.Nitrogen,
            PlantNutrient.Phosphate => ChemicalForm.Phosphate,
            PlantNutrient.Potash => ChemicalForm.Potash,
            PlantNutrient.Sulfur => ChemicalForm.Sulfur,
            PlantNutrient.Calcium => ChemicalForm.Calcium,
            PlantNutrient.Magnesium => ChemicalForm.Magnesium,
            PlantNutrient.Boron => ChemicalForm.Boron,
            PlantNutrient.Zinc => ChemicalForm.Zinc,
            PlantNutrient.Manganese => ChemicalForm.Manganese,
            PlantNutrient.Chlorine => ChemicalForm.Chlorine,
            _ => throw new ArgumentOutOfRangeException(nameof(nutrient), nutrient, "This nutrient has no other form here."),
        };

    /// <summary>Percent of a nutrient in a pure form.</summary>
    internal static double Percent(PlantNutrient nutrient, ChemicalForm pure) =>
        100 * ChemicalConversion.ExactFactor(pure, FormOf(nutrient));

    /// <summary>Percent of a nutrient in a pure compound; zero when the compound holds none of it.</summary>
    internal static double PercentOrZero(PlantNutrient nutrient, ChemicalForm pure)
    {
        // No compound named here holds copper or iron.
        if (nutrient is PlantNutrient.Copper or PlantNutrient.Iron)
        {
            return 0;
        }

        string element = ChemicalFormula.Of(FormOf(nutrient)).Atoms.Keys.First();
        return ChemicalFormula.Of(pure).Atoms.ContainsKey(element) ? Percent(nutrient, pure) : 0;
    }
}
