namespace PlotAgronomy.Liming;

/// <summary>What lime and acid do over time, and the account of a plot, as functions of doubles.</summary>
internal static class LimeTimes
{
    internal static double Trigger(double targetPh, double marginPh) => targetPh - marginPh;

    internal static double PoundsPerAcreOnPlot(double appliedPounds, double plannedPounds, double acres) =>
        (appliedPounds + plannedPounds) / acres;

    internal static double StillOwed(double needPounds, double appliedPounds) => Math.Max(0, needPounds - appliedPounds);

    internal static double AboveNeedPercent(double needPounds, double appliedPounds, double plannedPounds) =>
        Math.Max(0, 100 * (appliedPounds + plannedPounds - needPounds) / needPounds);

    /// <summary>Share of a material in one band of fineness that has worked.</summary>
    internal static double BandWorked(double shareInBand, double shareThatWorks, double months, double monthsToShare) =>
        shareInBand * shareThatWorks * Math.Min(1, months / monthsToShare);

    internal static double WorkedOfUnknownFineness(double months, double monthsToFullEffect) =>
        Math.Min(1, months / monthsToFullEffect);

    /// <summary>Straight line from today's pH to the target, and the error of the test that will show it.</summary>
    internal static double ExpectedPh(double ph, double targetPh, double shareDelivered, double shareWorked, double error) =>
        ph + (Math.Max(0, targetPh - ph) * shareDelivered * shareWorked) + error;

    /// <summary>Carbonate for a pound of nitrogen when all acid stays: two hydrogen ions to a carbonate.</summary>
    internal static double CarbonatePerNitrogen(double hydrogenIonsPerNitrogen, double carbonateMass, double nitrogenMass) =>
        hydrogenIonsPerNitrogen * (carbonateMass / 2 / nitrogenMass);

    /// <summary>Carbonate that would neutralize the acid; none for a fertilizer that leaves base.</summary>
    internal static double CarbonateForAcid(double nitrogen, double carbonatePerNitrogen) =>
        Math.Max(0, nitrogen * carbonatePerNitrogen);

    internal static double PhFall(double carbonate, double capacity, double depthInches, double millionPoundsSoilPerInch) =>
        carbonate / (capacity * depthInches * millionPoundsSoilPerInch);

    internal static double SulfurByPh(double ratePerPh, double ph, double targetPh) => ratePerPh * (ph - targetPh);
}
