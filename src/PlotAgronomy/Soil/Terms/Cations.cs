using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>Equivalent weights as laboratories count by, and oxide factors from atomic masses.</summary>
internal static class Cations
{
    /// <summary>Grams per mole of charge, or null when it is not one of the four exchangeable bases. The same whole numbers that
    /// the
    /// exchange capacity is summed by, so that one reading has one charge; an acidity term may print its own.</summary>
    internal static double? EquivalentWeightOf(SoilAnalyte analyte) =>
        analyte switch
        {
            SoilAnalyte.Calcium => SoilConstants.All["calcium-equivalent"],
            SoilAnalyte.Magnesium => SoilConstants.All["magnesium-equivalent"],
            SoilAnalyte.Potassium => SoilConstants.All["potassium-equivalent"],
            SoilAnalyte.Sodium => SoilConstants.All["sodium-equivalent"],
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
