using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Pennsylvania's field rule by exchangeable acidity (LIME-S8).</summary>
internal sealed class PennsylvaniaFormula : LimeFormula
{
    private static double FieldTarget => LimingConstants.All["pa-target-field"];

    private static double HighTarget => LimingConstants.All["pa-target-high"];

    internal override ImmutableArray<double> Targets => [FieldTarget, HighTarget];

    internal override string Reads => "exchangeable acidity in meq/100 g";

    internal override double? ReadingOf(LimeSample sample) => sample.AcidityPer100Grams;

    /// <summary>Exactly 4.0 meq/100 g is not covered by the printed rule: the larger figure is taken.</summary>
    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        targetPh == HighTarget ? LimingConstants.All["pa-per-meq-7.0"] * reading
        : reading >= LimingConstants.All["pa-limit-6.5"] ? LimingConstants.All["pa-per-meq-6.5"] * reading
        : LimingConstants.All["pa-least-6.5"];

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        sample.WaterPh is null && targetPh != HighTarget && sample.AcidityPer100Grams < LimingConstants.All["pa-limit-6.5"]
            ? FindingCatalog.Create("lime-ph-missing-required")
            : null;

    internal override IEnumerable<Finding> Findings(double reading, LimeSample sample, double targetPh)
    {
        if (targetPh != HighTarget && reading == LimingConstants.All["pa-limit-6.5"])
        {
            yield return FindingCatalog.Create(
                "lime-rule-gap",
                ("method", "Pennsylvania's guide"),
                ("reading", Amounts.Print(reading, 1))
            );
        }
    }

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        string rule = targetPh == HighTarget ? "1000 x acidity" : "840 x acidity above 4.0 meq/100 g; below it 2000 lb/ac";
        yield return new(
            "Base rate",
            rule,
            $"acidity {Amounts.Print(reading, 2)} meq/100 g: "
                + $"{Amounts.Print(PoundsPerAcre(reading, sample, targetPh)!.Value, 0)} lb/ac",
            "LIME-S8"
        );
    }
}
