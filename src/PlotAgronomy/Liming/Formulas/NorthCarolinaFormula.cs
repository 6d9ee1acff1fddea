using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>ton/ac = Ac x (target - pH) / (6.6 - pH), Ac = 4 x (6.6 - Mehlich buffer pH) or as printed (LIME-S7).</summary>
internal sealed class NorthCarolinaFormula : LimeFormula
{
    private static double EndPh => LimingConstants.All["nc-end-ph"];

    internal override string Reads => "Mehlich buffer pH or the acidity Ac";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) =>
        LimeReadings.BufferPh(sample, [SoilBuffer.Mehlich])
        ?? (
            sample.AcidityPer100CubicCentimeters is { } acidity
                ? EndPh - (acidity / LimingConstants.All["nc-acidity-per-ph"])
                : null
        );

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        targetPh < EndPh
            ? null
            : FindingCatalog.Create(
                "lime-target-too-high",
                ("method", "North Carolina's equation"),
                ("limit", $"below pH {LimeText.Ph(EndPh)}"),
                ("target", LimeText.Ph(targetPh))
            );

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        ExactUnits.PoundsPerShortTon
        * LimeMath.NorthCarolinaTonsPerAcre(Acidity(reading), sample.WaterPh!.Value, targetPh, EndPh);

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        double ph = sample.WaterPh!.Value;
        yield return new(
            "Acidity Ac",
            "4 x (6.6 - buffer pH)",
            $"4 x (6.6 - {Amounts.Print(reading, 3)}) = {Amounts.Print(Acidity(reading), 3)} meq/100 cm3",
            "LIME-S7"
        );
        yield return new(
            "Base rate",
            "Ac x (target - pH) / (6.6 - pH)",
            $"{Amounts.Print(Acidity(reading), 3)} x ({LimeText.Ph(targetPh)} - {LimeText.Ph(ph)}) / (6.6 - {LimeText.Ph(ph)}) "
                + $"= {LimeText.Tons(PoundsPerAcre(reading, sample, targetPh)!.Value)} ton/ac",
            "LIME-S7"
        );
    }

    private static double Acidity(double bufferPh) => LimingConstants.All["nc-acidity-per-ph"] * (EndPh - bufferPh);
}
