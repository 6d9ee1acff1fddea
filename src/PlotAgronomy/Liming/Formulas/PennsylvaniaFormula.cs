using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Pennsylvania's field rule by exchangeable acidity: one figure for each meq, or the least rate.</summary>
internal sealed class PennsylvaniaFormula(CsvRow method) : LimeFormulaBy<PennsylvaniaLimeKernel>(method)
{
    private readonly double highTarget = LimingConstants.All["pa-target-high"];

    private readonly double perMeqToHighTarget = LimingConstants.All["pa-per-meq-7-0"];

    private readonly double perMeqToFieldTarget = LimingConstants.All["pa-per-meq-6-5"];

    private readonly double limit = LimingConstants.All["pa-limit-6-5"];

    private readonly double least = LimingConstants.All["pa-least-6-5"];

    internal override ImmutableArray<double> Targets { get; } =
    [LimingConstants.All["pa-target-field"], LimingConstants.All["pa-target-high"]];

    internal override string Reads => "exchangeable acidity in meq/100 g";

    internal override double? ReadingOf(PlotSoil soil) => soil.AcidityPer100Grams;

    internal override PennsylvaniaLimeKernel KernelTo(double targetPh, SoilTexture? texture) =>
        new()
        {
            IsHighTarget = targetPh == highTarget,
            PerMeq = targetPh == highTarget ? perMeqToHighTarget : perMeqToFieldTarget,
            Limit = limit,
            Least = least,
        };

    internal override LimeRemarks MayRemark => LimeRemarks.RuleGap;

    /// <summary>The least rate goes to a soil below its target only, so that its pH must be known.</summary>
    internal override (double LowestPh, double LowestReadingWithoutPh) Domain(double targetPh) =>
        (double.NegativeInfinity, targetPh == highTarget ? double.NegativeInfinity : limit);

    internal override Finding Refusal(string waterPh, double targetPh) => FindingCatalog.Create(LimingCodes.PhMissingRequired);

    internal override IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh)
    {
        KernelFor(soil, targetPh).PoundsPerAcre(reading, WaterPh(soil), out var remarks);
        if (remarks.HasFlag(LimeRemarks.RuleGap))
        {
            yield return FindingCatalog.Create(
                LimingCodes.RuleGap,
                ("method", MethodName),
                ("reading", Amounts.Print(reading, 1))
            );
        }
    }

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        bool high = targetPh == highTarget;
        string branch =
            high ? "pennsylvania-lime-rate-high"
            : reading < limit ? "pennsylvania-lime-rate-least"
            : "pennsylvania-lime-rate-field";
        yield return LimingFormulas
            .All[branch]
            .Line(
                $"{Amounts.Print(PoundsPerAcre(reading, soil, targetPh)!.Value, 0)} lb/ac",
                ("acidity", Amounts.Print(reading, 2)),
                ("lb per meq", Amounts.Print(high ? perMeqToHighTarget : perMeqToFieldTarget, 0)),
                ("limit", Amounts.Print(limit, 2)),
                ("least rate", $"{Amounts.Print(least, 0)} lb/ac")
            );
    }
}
