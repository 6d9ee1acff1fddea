using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The sums of Adams and Evans with their published coefficients.</summary>
internal static class AdamsEvans
{
    internal static double HighestCapacity => LimingConstants.All["ae-highest-cec"];

    internal static double HighestNeed => LimingConstants.All["ae-highest-need"];

    internal static Origin Origin => LimingConstants.All.Find("ae-ag-lime-per-meq").Origin;

    /// <summary>The pH of a wholly acid soil: pH = constant - linear Hs + square Hs squared at Hs = 1. Below it the share would
    /// pass 1.</summary>
    internal static double LowestPh => PhConstant - PhLinear + PhSquare;

    private static double AcidityPerPh => LimingConstants.All["ae-acidity-per-ph"];

    private static double StartPh => LimingConstants.All["ae-start-ph"];

    private static double PhConstant => LimingConstants.All["ae-ph-constant"];

    private static double PhLinear => LimingConstants.All["ae-ph-linear"];

    private static double PhSquare => LimingConstants.All["ae-ph-square"];

    private static double TonsPerMeq => LimingConstants.All["ae-ag-lime-per-meq"];

    private static double HighestTarget => LimingConstants.All["ae-highest-target"];

    internal static double Acidity(double bufferPh) => LimeMath.AdamsEvansAcidity(bufferPh, StartPh, AcidityPerPh);

    internal static double Capacity(double bufferPh, double waterPh) =>
        LimeMath.AdamsEvansCapacity(Acidity(bufferPh), AcidShare(waterPh));

    internal static double TonsPerAcre(double capacityMeqPer100Grams, double waterPh, double targetPh) =>
        LimeMath.AdamsEvansTonsPerAcre(capacityMeqPer100Grams, AcidShare(waterPh), AcidShare(targetPh), TonsPerMeq);

    internal static IEnumerable<WorkedLine> CapacityLines(double bufferPh, double waterPh)
    {
        string acidity = Amounts.Print(Acidity(bufferPh), 3);
        yield return LimingFormulas
            .All["adams-evans-acidity"]
            .Line(
                $"{acidity} meq/100 g",
                ("acidity per pH", Amounts.Print(AcidityPerPh, 3)),
                ("start pH", LimeText.Ph(StartPh)),
                ("buffer pH", LimeText.Ph(bufferPh))
            );
        yield return ShareLine("now", waterPh);
        yield return LimingFormulas
            .All["adams-evans-cec"]
            .Line(
                $"{Amounts.Print(Capacity(bufferPh, waterPh), 3)} meq/100 g",
                ("H", acidity),
                ("acid share now", Amounts.Print(AcidShare(waterPh), 4))
            );
    }

    internal static IEnumerable<WorkedLine> RateLines(string what, double capacity, double waterPh, double targetPh)
    {
        yield return ShareLine("at the target", targetPh);
        yield return LimingFormulas
            .All["adams-evans-lime-rate"]
            .Line(
                $"{Amounts.Print(TonsPerAcre(capacity, waterPh, targetPh), 3)} ton/ac",
                ("what", what),
                ("ag lime per meq", Amounts.Print(TonsPerMeq, 3)),
                ("CEC", Amounts.Print(capacity, 3)),
                ("acid share now", Amounts.Print(AcidShare(waterPh), 4)),
                ("acid share at the target", Amounts.Print(AcidShare(targetPh), 4))
            );
    }

    internal static WorkedLine ShareLine(string when, double ph) =>
        LimingFormulas
            .All["adams-evans-acid-share"]
            .Line(
                Amounts.Print(AcidShare(ph), 4),
                ("when", when),
                ("linear", Amounts.Print(PhLinear, 3)),
                ("square", Amounts.Print(PhSquare, 3)),
                ("constant", Amounts.Print(PhConstant, 3)),
                ("pH", LimeText.Ph(ph))
            );

    /// <summary>Whether the curve holds for this pH and target.</summary>
    internal static bool Holds(double waterPh, double targetPh) => waterPh >= LowestPhTo(targetPh);

    /// <summary>Infinite for a target that it does not reach.</summary>
    internal static double LowestPhTo(double targetPh) => targetPh <= HighestTarget ? LowestPh : double.PositiveInfinity;

    /// <summary>Why the curve does not hold for this pH and target, where it does not.</summary>
    internal static Finding Refusal(string methodName, string waterPh, double targetPh) =>
        targetPh > HighestTarget
            ? FindingCatalog.Create(
                LimingCodes.TargetTooHigh,
                ("method", methodName),
                ("limit", $"up to pH {LimeText.Ph(HighestTarget)}"),
                ("target", LimeText.Ph(targetPh))
            )
            : FindingCatalog.Create(
                LimingCodes.PhBelowDomain,
                ("ph", waterPh),
                ("method", methodName),
                ("lowest", LimeText.Ph(LowestPh))
            );

    internal static AdamsEvansLimeKernel KernelTo(double targetPh) =>
        new()
        {
            AcidityPerPh = AcidityPerPh,
            StartPh = StartPh,
            PhConstant = PhConstant,
            PhLinear = PhLinear,
            PhSquare = PhSquare,
            TonsPerMeq = TonsPerMeq,
            AcidShareAtTarget = AcidShare(targetPh),
            HighestCapacity = HighestCapacity,
            HighestNeed = HighestNeed,
        };

    private static double AcidShare(double ph) => LimeMath.AdamsEvansAcidShare(ph, PhConstant, PhLinear, PhSquare);
}
