namespace PlotAgronomy.Liming;

/// <summary>What a liming material is worth, as functions of doubles.</summary>
internal static class LimeStrength
{
    internal static double FinenessOfBand(double factor, double sharePassing, double sharePassingFiner) =>
        factor * (sharePassing - sharePassingFiner);

    internal static double Figure(double equivalentPercent, double fineness, double dryMatter, double whole) =>
        equivalentPercent / 100 * fineness * dryMatter * whole;

    /// <summary>100 x n x M(CaCO3) / M.</summary>
    internal static double EquivalentPercent(double bases, double carbonateMass, double compoundMass) =>
        100 * bases * carbonateMass / compoundMass;

    internal static double NorthCarolinaLabelPercent(double poundsEqualToOneTon) =>
        100 * ExactUnits.PoundsPerShortTon / poundsEqualToOneTon;

    internal static double Magnesium(double pounds, double share) => pounds * share;

    internal static double Power(double pounds, double figure, double figureOfWhole) => pounds * figure / figureOfWhole;
}
