using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Pennsylvania's field rule by exchangeable acidity: one figure for each meq, or the least rate.</summary>
internal sealed class PennsylvaniaFormula(CsvRow method) : LimeFormula(method)
{
    private static double FieldTarget => LimingConstants.All["pa-target-field"];

    private static double HighTarget => LimingConstants.All["pa-target-high"];

    private static double PerMeqToHighTarget => LimingConstants.All["pa-per-meq-7-0"];

    private static double PerMeqToFieldTarget => LimingConstants.All["pa-per-meq-6-5"];

    private static double Limit => LimingConstants.All["pa-limit-6-5"];

    private static double Least => LimingConstants.All["pa-least-6-5"];

    internal override ImmutableArray<double> Targets => [FieldTarget, HighTarget];

    internal override string Reads => "exchangeable acidity in meq/100 g";

    internal override double? ReadingOf(LimeSample sample) => sample.AcidityPer100Grams;

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        targetPh == HighTarget
            ? LimeMath.PennsylvaniaHighPoundsPerAcre(reading, PerMeqToHighTarget)
            : LimeMath.PennsylvaniaFieldPoundsPerAcre(reading, PerMeqToFieldTarget, Limit, Least);

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        sample.WaterPh is null && targetPh != HighTarget && sample.AcidityPer100Grams < Limit
            ? FindingCatalog.Create(LimingCodes.PhMissingRequired)
            : null;

    internal override IEnumerable<Finding> Findings(double reading, LimeSample sample, double targetPh)
    {
        if (targetPh != HighTarget && reading == Limit)
        {
            yield return FindingCatalog.Create(
                LimingCodes.RuleGap,
                ("method", MethodName),
                ("reading", Amounts.Print(reading, 1))
            );
        }
    }

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        bool high = targetPh == HighTarget;
        string branch =
            high ? "pennsylvania-lime-rate-high"
            : reading < Limit ? "pennsylvania-lime-rate-least"
            : "pennsylvania-lime-rate-field";
        yield return LimingFormulas
            .All[branch]
            .Line(
                $"{Amounts.Print(PoundsPerAcre(reading, sample, targetPh)!.Value, 0)} lb/ac",
                ("acidity", Amounts.Print(reading, 2)),
                ("lb per meq", Amounts.Print(high ? PerMeqToHighTarget : PerMeqToFieldTarget, 0)),
                ("limit", Amounts.Print(Limit, 2)),
                ("least rate", $"{Amounts.Print(Least, 0)} lb/ac")
            );
    }
}
