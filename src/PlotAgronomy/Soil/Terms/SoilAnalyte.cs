using PlotAgronomy.Soil;

namespace PlotAgronomy;

/// <summary>What a reading of a soil report is about, always as the element; whether the number was printed as the
/// element or as its oxide is said by <see cref="PrintedForm"/>.</summary>
public enum SoilAnalyte
{
    /// <summary>Phosphorus, P.</summary>
    Phosphorus,

    /// <summary>Potassium, K.</summary>
    Potassium,

    /// <summary>Calcium, Ca.</summary>
    Calcium,

    /// <summary>Magnesium, Mg.</summary>
    Magnesium,

    /// <summary>Sodium, Na.</summary>
    Sodium,

    /// <summary>Sulfur, S, as sulfate.</summary>
    Sulfur,

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

    /// <summary>Aluminum, Al.</summary>
    Aluminum,

    /// <summary>Nitrogen, N, as nitrate.</summary>
    NitrateNitrogen,

    /// <summary>Soluble salts.</summary>
    SolubleSalts,
}
