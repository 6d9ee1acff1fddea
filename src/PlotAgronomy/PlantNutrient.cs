namespace PlotAgronomy;

/// <summary>A nutrient in the form in which it is recommended and guaranteed on a label:
/// phosphorus as P2O5 and potassium as K2O, all others as the element.</summary>
public enum PlantNutrient
{
    /// <summary>Nitrogen, N.</summary>
    Nitrogen,

    /// <summary>Available phosphate, P2O5.</summary>
    Phosphate,

    /// <summary>Soluble potash, K2O.</summary>
    Potash,

    /// <summary>Sulfur, S.</summary>
    Sulfur,

    /// <summary>Calcium, Ca.</summary>
    Calcium,

    /// <summary>Magnesium, Mg.</summary>
    Magnesium,

    /// <summary>Boron, B.</summary>
    Boron,

    /// <summary>Zinc, Zn.</summary>
    Zinc,

    /// <summary>Manganese, Mn.</summary>
    Manganese,

    /// <summary>Copper, Cu.</summary>
    Copper,

    /// <summary>Iron, Fe.</summary>
    Iron,

    /// <summary>Chlorine, Cl.</summary>
    Chlorine,
}
