namespace PlotAgronomy.Liming;

/// <summary>The published lime rates as functions of doubles; units stand in the names.</summary>
internal static class LimeMath
{
    /// <summary>per pH x (end - buffer pH).</summary>
    internal static double NorthCarolinaAcidity(double bufferPh, double endPh, double acidityPerPh) =>
        acidityPerPh * (endPh - bufferPh);

    /// <summary>Ac x (target - pH) / (end - pH).</summary>
    internal static double NorthCarolinaTonsPerAcre(double acidityMeqPer100Cm3, double waterPh, double targetPh, double endPh) =>
        acidityMeqPer100Cm3 * (targetPh - waterPh) / (endPh - waterPh);

    /// <summary>R - R x months x loss, never below zero.</summary>
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

    internal static double PennsylvaniaHighPoundsPerAcre(double acidityMeqPer100Grams, double poundsPerMeq) =>
        poundsPerMeq * acidityMeqPer100Grams;

    /// <summary>Exactly at the limit the printed rule says nothing: the larger figure is taken.</summary>
    internal static double PennsylvaniaFieldPoundsPerAcre(
        double acidityMeqPer100Grams,
        double poundsPerMeq,
        double limitMeqPer100Grams,
        double leastPoundsPerAcre
    ) => acidityMeqPer100Grams >= limitMeqPer100Grams ? poundsPerMeq * acidityMeqPer100Grams : leastPoundsPerAcre;

    /// <summary>Acidity as lb/ac to whole steps, at least the least, then to the step printed for 1000 ft2.</summary>
    internal static double TurfPoundsPerThousandSquareFeet(
        double acidityMeqPer100Grams,
        double poundsPerMeq,
        double lessPounds,
        double stepPoundsPerAcre,
        double leastPoundsPerAcre,
        double printedStep
    )
    {
        double perAcre = Math.Max(
            leastPoundsPerAcre,
            Whole((poundsPerMeq * acidityMeqPer100Grams) - lessPounds, stepPoundsPerAcre)
        );
        return Whole(ApplicationRate.FromPoundsPerAcre(perAcre).PoundsPerThousandSquareFeet, printedStep);

        static double Whole(double value, double step) =>
            step * Math.Round(Math.Round(value / step, 9, MidpointRounding.AwayFromZero), MidpointRounding.AwayFromZero);
    }

    /// <summary>per pH x (start - buffer pH).</summary>
    internal static double AdamsEvansAcidity(double bufferPh, double startPh, double acidityPerPh) =>
        acidityPerPh * (startPh - bufferPh);

    /// <summary>Acid-saturated share at a pH: the smaller root of pH = c - l Hs + s Hs squared. NaN where no root
    /// exists.</summary>
    internal static double AdamsEvansAcidShare(double waterPh, double constant, double linear, double square) =>
        (linear - Math.Sqrt((linear * linear) - (4 * square * (constant - waterPh)))) / (2 * square);

    internal static double AdamsEvansCapacity(double acidityMeqPer100Grams, double acidShare) =>
        acidityMeqPer100Grams / acidShare;

    internal static double AdamsEvansTonsPerAcre(
        double capacityMeqPer100Grams,
        double acidShareNow,
        double acidShareAtTarget,
        double tonsPerMeq
    ) => tonsPerMeq * capacityMeqPer100Grams * (acidShareNow - acidShareAtTarget);

    /// <summary>Pounds of Missouri's effective neutralizing material an acre for 1 meq/100 g: ten times 100 g are a kg, and mg
    /// per kg are lb per million lb.</summary>
    internal static double MissouriEnmPerMeq(
        double carbonateMilligramsPerMeq,
        double millionPoundsSoilPerInch,
        double depthInches,
        double enmPerTonOfCarbonate
    ) =>
        carbonateMilligramsPerMeq
        * 10
        * millionPoundsSoilPerInch
        * depthInches
        * enmPerTonOfCarbonate
        / ExactUnits.PoundsPerShortTon;

    internal static double MissouriPoundsPerAcre(double acidityMeqPer100Grams, double enmPerMeq) =>
        enmPerMeq * acidityMeqPer100Grams;

    internal static double SoilMillionPounds(double millionPoundsPerInch, double depthInches) =>
        millionPoundsPerInch * depthInches;

    /// <summary>mg/kg per pH x pH x million lb of soil.</summary>
    internal static double GeorgiaPoundsPerAcre(
        double capacityMgPerKgPerPh,
        double waterPh,
        double targetPh,
        double millionPoundsSoilPerAcre
    ) => capacityMgPerKgPerPh * (targetPh - waterPh) * millionPoundsSoilPerAcre;
}
