using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The sums of Adams and Evans: acid share from pH, CEC from acidity, ag lime from CEC (LIME-AE1, memory; domain
/// LIME-S42).</summary>
internal static class AdamsEvans
{
    /// <summary>The pH of a wholly acid soil: pH = 7.79 - 5.55 Hs + 2.27 Hs squared at Hs = 1. Below it the share would pass
    /// 1.</summary>
    internal static double LowestPh =>
        LimingConstants.All["ae-ph-constant"] - LimingConstants.All["ae-ph-linear"] + LimingConstants.All["ae-ph-square"];

    /// <summary>8 x (8.00 - buffer pH), meq/100 g.</summary>
    internal static double Acidity(double bufferPh) =>
        LimingConstants.All["ae-acidity-per-ph"] * (LimingConstants.All["ae-start-ph"] - bufferPh);

    internal static double Saturation(double ph) =>
        LimeMath.AcidSaturation(
            ph,
            LimingConstants.All["ae-ph-constant"],
            LimingConstants.All["ae-ph-linear"],
            LimingConstants.All["ae-ph-square"]
        );

    /// <summary>0.75 x CEC x (acid share now - at the target), ton/ac of ag lime.</summary>
    internal static double TonsPerAcre(double capacityMeqPer100Grams, double waterPh, double targetPh) =>
        LimingConstants.All["ae-ag-lime-per-meq"] * capacityMeqPer100Grams * (Saturation(waterPh) - Saturation(targetPh));

    /// <summary>Why the curve does not hold for this pH and target, or null.</summary>
    internal static Finding? Refusal(double waterPh, double targetPh) =>
        targetPh > LimingConstants.All["ae-highest-target"]
            ? FindingCatalog.Create(
                "lime-target-too-high",
                ("method", "Adams-Evans"),
                ("limit", $"up to pH {LimeText.Ph(LimingConstants.All["ae-highest-target"])}"),
                ("target", LimeText.Ph(targetPh))
            )
        : waterPh < LowestPh
            ? FindingCatalog.Create(
                "lime-ph-below-domain",
                ("ph", LimeText.Ph(waterPh)),
                ("method", "Adams-Evans"),
                ("lowest", LimeText.Ph(LowestPh))
            )
        : null;
}
