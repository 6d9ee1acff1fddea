using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Equivalent weights and oxide factors, from atomic masses.</summary>
internal static class Cations
{
    /// <summary>Grams per mole of charge, or null when it is not one of the four exchangeable bases.</summary>
    internal static double? EquivalentWeightOf(SoilAnalyte analyte) =>
        analyte switch
        {
            SoilAnalyte.Calcium => AtomicMasses.Of("Ca") / 2,
            SoilAnalyte.Magnesium => AtomicMasses.Of("Mg") / 2,
            SoilAnalyte.Potassium => AtomicMasses.Of("K"),
            SoilAnalyte.Sodium => AtomicMasses.Of("Na"),
            _ => null,
        };

    /// <summary>Mass of oxide per mass of element.</summary>
    internal static double OxideFactorOf(SoilAnalyte analyte) =>
        analyte switch
        {
            SoilAnalyte.Phosphorus => AtomicMasses.PhosphatePerPhosphorus,
            SoilAnalyte.Potassium => AtomicMasses.PotashPerPotassium,
            SoilAnalyte.Magnesium => AtomicMasses.MagnesiaPerMagnesium,
            SoilAnalyte.Calcium => AtomicMasses.QuicklimePerCalcium,
            _ => throw new ArgumentException($"{SoilWords.Opening(analyte)} is not reported as an oxide.", nameof(analyte)),
        };
}
