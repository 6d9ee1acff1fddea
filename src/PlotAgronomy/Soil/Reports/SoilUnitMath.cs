namespace PlotAgronomy.Soil;

/// <summary>Kernels of the unit conversions; units stand in the names.</summary>
internal static class SoilUnitMath
{
    private const double MetersPerInch = 0.0254;
    private const double LitersPerCubicMeter = 1000;

    /// <summary>Liters of soil in a layer one inch thick on one acre: 102,790.</summary>
    internal const double LitersPerAcreInch = ExactUnits.SquareMetersPerAcre * MetersPerInch * LitersPerCubicMeter;

    /// <summary>lb/ac in a layer one inch thick for each mg/dm3, or million lb of soil for each g/cm3: 0.2266.</summary>
    internal const double PoundsPerAcreInch = LitersPerAcreInch / 1e6 / ExactUnits.KilogramsPerPound;

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

    internal static double SoilPoundsPerAcreByDepth(double slicePoundsPerAcre, double depthInches, double sliceInches) =>
        slicePoundsPerAcre * depthInches / sliceInches;

    internal static double ElementFromOxide(double oxide, double oxidePerElement) => oxide / oxidePerElement;

    internal static double OxideFromElement(double element, double oxidePerElement) => element * oxidePerElement;

    internal static double ChargeFromSaturation(double percent, double capacity) => percent / 100 * capacity;

    internal static double SaturationFromCharge(double charge, double capacity) => 100 * charge / capacity;

    internal static double ConcentrationFromIndex(double index, double perIndexUnit) => index * perIndexUnit;

    internal static double IndexFromConcentration(double concentration, double perIndexUnit) => concentration / perIndexUnit;

    /// <summary>Charge by weight from a charge by volume.</summary>
    internal static double ChargeByWeight(double chargeByVolume, double gramsPerCubicCentimeter) =>
        chargeByVolume / gramsPerCubicCentimeter;

    /// <summary>A reading by another extractant.</summary>
    internal static double ByOtherExtractant(double reading, double factor) => reading * factor;

    internal static double PpmFromMgPerLiter(double mgPerLiter, double gramsPerCubicCentimeter) =>
        mgPerLiter / gramsPerCubicCentimeter;

    internal static double MgPerLiterFromPpm(double ppm, double gramsPerCubicCentimeter) => ppm * gramsPerCubicCentimeter;

    /// <summary>ppm = meq/100 g x equivalent weight x 10; the same for meq/100 cm3 and mg per liter.</summary>
    internal static double PpmFromMilliequivalents(double milliequivalents, double equivalentWeight) =>
        milliequivalents * equivalentWeight * 10;

    internal static double MilliequivalentsFromPpm(double ppm, double equivalentWeight) => ppm / (equivalentWeight * 10);
}
