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

    /// <summary>Kansas: pounds of zinc that fall with the test.</summary>
    internal static double KansasZinc(double constant, double perTest, double test) =>
        Math.Max(0, constant + Linear(0, perTest, test, 0, 0));

    /// <summary>Tri-State: pounds of zinc or manganese that rise with the pH and fall with the test.</summary>
    internal static double TriStateTrace(double constant, double perTest, double test, double perPh, double ph) =>
        Math.Max(0, constant + Linear(0, perTest, test, perPh, ph));
}
