namespace PlotAgronomy.Soil;

/// <summary>Kernels of the unit conversions; units stand in the names.</summary>
internal static class SoilUnitMath
{
    private const double MetersPerInch = 0.0254;
    private const double LitersPerCubicMeter = 1000;

    /// <summary>Liters of soil in a layer one inch thick on one acre: 102,790.</summary>
    internal const double LitersPerAcreInch = ExactUnits.SquareMetersPerAcre * MetersPerInch * LitersPerCubicMeter;

    /// <summary>kg of soil is g/cm3 times liters.</summary>
    internal static double SoilPoundsPerAcre(double gramsPerCubicCentimeter, double depthInches) =>
        gramsPerCubicCentimeter * LitersPerAcreInch * depthInches / ExactUnits.KilogramsPerPound;

    internal static double PoundsPerAcreFromPpm(double ppm, double soilPoundsPerAcre) => ppm * soilPoundsPerAcre / 1e6;

    internal static double PpmFromPoundsPerAcre(double poundsPerAcre, double soilPoundsPerAcre) =>
        poundsPerAcre / soilPoundsPerAcre * 1e6;

    internal static double PoundsPerAcreFromMgPerLiter(double mgPerLiter, double depthInches) =>
        mgPerLiter * LitersPerAcreInch * depthInches / 1e6 / ExactUnits.KilogramsPerPound;

    internal static double MgPerLiterFromPoundsPerAcre(double poundsPerAcre, double depthInches) =>
        poundsPerAcre * ExactUnits.KilogramsPerPound * 1e6 / (LitersPerAcreInch * depthInches);

    internal static double PpmFromMgPerLiter(double mgPerLiter, double gramsPerCubicCentimeter) =>
        mgPerLiter / gramsPerCubicCentimeter;

    internal static double MgPerLiterFromPpm(double ppm, double gramsPerCubicCentimeter) => ppm * gramsPerCubicCentimeter;

    /// <summary>ppm = meq/100 g x equivalent weight x 10; the same for meq/100 cm3 and mg per liter.</summary>
    internal static double PpmFromMilliequivalents(double milliequivalents, double equivalentWeight) =>
        milliequivalents * equivalentWeight * 10;

    internal static double MilliequivalentsFromPpm(double ppm, double equivalentWeight) => ppm / (equivalentWeight * 10);
}
