using System.Globalization;

namespace PlotAgronomy.Fertilizers;

/// <summary>An analysis with phosphorus and potassium stated as elements: percent N, P and K by weight.</summary>
/// <remarks>A type of its own, so that P is never read as P2O5. Source of the factors: MASS-IUPAC.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ElementalAnalysis
{
    private ElementalAnalysis(double nitrogen, double phosphorus, double potassium) =>
        (NitrogenPercent, PhosphorusPercent, PotassiumPercent) = (nitrogen, phosphorus, potassium);

    /// <summary>Gets N in percent.</summary>
    public double NitrogenPercent { get; }

    /// <summary>Gets elemental P in percent.</summary>
    public double PhosphorusPercent { get; }

    /// <summary>Gets elemental K in percent.</summary>
    public double PotassiumPercent { get; }

    /// <summary>Creates an elemental analysis.</summary>
    /// <param name="nitrogenPercent">N in percent; from 0 to 100.</param>
    /// <param name="phosphorusPercent">P in percent; from 0 to 100.</param>
    /// <param name="potassiumPercent">K in percent; from 0 to 100.</param>
    /// <returns>The analysis.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range, or an analysis no material can have.</exception>
    public static ElementalAnalysis FromPercent(double nitrogenPercent, double phosphorusPercent, double potassiumPercent)
    {
        var analysis = new ElementalAnalysis(
            Guard.Between(nitrogenPercent, 0, 100, "%"),
            Guard.Between(phosphorusPercent, 0, 100, "%"),
            Guard.Between(potassiumPercent, 0, 100, "%")
        );
        analysis.ToLabel();
        return analysis;
    }

    /// <summary>The elements behind a label.</summary>
    /// <param name="label">Guaranteed analysis in P2O5 and K2O.</param>
    /// <returns>The elemental analysis.</returns>
    public static ElementalAnalysis FromLabel(FertilizerAnalysis label)
    {
        ArgumentNullException.ThrowIfNull(label);
        return new ElementalAnalysis(
            label.Percent(PlantNutrient.Nitrogen),
            label.Percent(PlantNutrient.Phosphate)
                * ChemicalConversion.ExactFactor(ChemicalForm.Phosphate, ChemicalForm.Phosphorus),
            label.Percent(PlantNutrient.Potash) * ChemicalConversion.ExactFactor(ChemicalForm.Potash, ChemicalForm.Potassium)
        );
    }

    /// <summary>The label this would be: P2O5 = 2.2913 P, K2O = 1.2046 K, by exact atomic masses.</summary>
    /// <returns>The guaranteed analysis.</returns>
    public FertilizerAnalysis ToLabel() =>
        FertilizerAnalysis.FromPercent(
            NitrogenPercent,
            PhosphorusPercent * ChemicalConversion.ExactFactor(ChemicalForm.Phosphorus, ChemicalForm.Phosphate),
            PotassiumPercent * ChemicalConversion.ExactFactor(ChemicalForm.Potassium, ChemicalForm.Potash)
        );

    /// <summary>Invariant text.</summary>
    /// <returns>Text such as <c>10 N, 4.36 P, 8.3 K %</c>.</returns>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{NitrogenPercent:0.##} N, {PhosphorusPercent:0.##} P, {PotassiumPercent:0.##} K %"
        );
}
