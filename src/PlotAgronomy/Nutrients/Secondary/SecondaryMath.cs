namespace PlotAgronomy.Nutrients;

/// <summary>Kernels of the rules for secondary and trace nutrients.</summary>
internal static class SecondaryMath
{
    internal static double Linear(double constant, double perTest, double test, double perPh, double ph) =>
        constant + perTest * test + perPh * ph;

    /// <summary>Sulfur, or another element of organic matter, that a season sets free, lb/ac.</summary>
    internal static double ReleasedPoundsPerAcre(
        double soilPoundsPerAcre,
        double organicMatter,
        double shareOfOrganicMatter,
        double shareReleased
    ) => soilPoundsPerAcre * organicMatter * shareOfOrganicMatter * shareReleased;
}
