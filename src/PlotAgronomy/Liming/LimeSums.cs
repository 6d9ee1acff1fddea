namespace PlotAgronomy.Liming;

/// <summary>The sums that bring a lime rate to another depth, lime or plot, as functions of doubles.</summary>
internal static class LimeSums
{
    internal static double LessCredit(double rate, double credit) => Math.Max(0, rate - credit);

    internal static double Apart(double most, double least) => most - least;

    internal static double AtDepth(double rate, double depthInches, double depthOfRateInches) =>
        rate * (depthInches / depthOfRateInches);

    /// <summary>Tons of one lime that do what a ton of another does, both rated in one index.</summary>
    internal static double StrengthFactor(double strength, double otherStrength) => strength / otherStrength;

    /// <summary>The same across two indices, through a material whose figure is known in both.</summary>
    internal static double FactorThrough(
        double oldStrength,
        double materialInOldIndex,
        double materialInNewIndex,
        double newStrength
    ) => oldStrength / materialInOldIndex * (materialInNewIndex / newStrength);

    internal static double InOtherLime(double rate, double factor) => rate * factor;

    /// <summary>Fine lime in place of ordinary lime.</summary>
    internal static double FineLime(double rate, double fine, double ordinary) => rate * (fine / ordinary);

    /// <summary>Tons an acre for a wanted rise of pH, by the rule for weakly buffered soil.</summary>
    internal static double WeakRule(double targetPh, double ph, double phPerTon) => Math.Max(0, targetPh - ph) / phPerTon;

    internal static double WeakMost(double mostAtOnce, double byRule, double byCapacity) =>
        Math.Min(mostAtOnce, Math.Max(byRule, byCapacity));

    internal static double Smallest(double upperEnd, double byRule, double other) => Math.Min(upperEnd, Math.Min(byRule, other));

    internal static double FirstDressing(double firstDressing, double upperEnd) => Math.Min(firstDressing, upperEnd);

    /// <summary>Pounds for an area, less what is on it already; never below zero.</summary>
    internal static double ForArea(double poundsPerAcre, double acres, double alreadyPounds) =>
        Math.Max(0, (poundsPerAcre * acres) - alreadyPounds);

    /// <summary>Cost of as much effect as a ton of pure powder has.</summary>
    internal static decimal CostOfEffect(decimal pricePerPound, double shareOfWhole) =>
        pricePerPound * (decimal)(ExactUnits.PoundsPerShortTon / shareOfWhole);
}
