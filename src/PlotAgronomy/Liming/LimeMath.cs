namespace PlotAgronomy.Liming;

/// <summary>The formulas of this room as functions of doubles; units stand in the names.</summary>
internal static class LimeMath
{
    /// <summary>Ac x (target - pH) / (end - pH); LIME-S7.</summary>
    internal static double NorthCarolinaTonsPerAcre(double acidityMeqPer100Cm3, double waterPh, double targetPh, double endPh) =>
        acidityMeqPer100Cm3 * (targetPh - waterPh) / (endPh - waterPh);

    /// <summary>R - R x months x loss, never below zero; LIME-S7.</summary>
    internal static double ResidualTonsPerAcre(double appliedTonsPerAcre, double months, double lossPerMonth) =>
        Math.Max(0, appliedTonsPerAcre - (appliedTonsPerAcre * months * lossPerMonth));

    /// <summary>constant + a x reading + b x reading squared + c x water pH.</summary>
    internal static double Linear(
        double constant,
        double perReading,
        double perReadingSquared,
        double perWaterPh,
        double reading,
        double waterPh
    ) => constant + (perReading * reading) + (perReadingSquared * reading * reading) + (perWaterPh * waterPh);

    /// <summary>Acid-saturated share at a pH: the smaller root of pH = c - l Hs + s Hs squared; LIME-AE1. NaN where no root
    /// exists.</summary>
    internal static double AcidSaturation(double waterPh, double constant, double linear, double square) =>
        (linear - Math.Sqrt((linear * linear) - (4 * square * (constant - waterPh)))) / (2 * square);

    /// <summary>LBCeq = LBC30 x (a + b x LBC30); LIME-S36.</summary>
    internal static double EquilibriumBufferCapacity(double thirtyMinuteMgPerKgPerPh, double constant, double slope) =>
        thirtyMinuteMgPerKgPerPh * (constant + (slope * thirtyMinuteMgPerKgPerPh));

    /// <summary>mg/kg per pH x pH x million lb of soil = lb/ac.</summary>
    internal static double BufferCapacityPoundsPerAcre(double mgPerKgPerPh, double phChange, double millionPoundsSoilPerAcre) =>
        mgPerKgPerPh * phChange * millionPoundsSoilPerAcre;
}
