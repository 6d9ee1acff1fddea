using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>ton/ac = Ac x (target - pH) / (end - pH), Ac from the Mehlich buffer pH or as printed.</summary>
internal sealed class NorthCarolinaFormula(CsvRow method) : LimeFormula(method)
{
    private static double EndPh => LimingConstants.All["nc-end-ph"];

    private static double AcidityPerPh => LimingConstants.All["nc-acidity-per-ph"];

    internal override string Reads => "Mehlich buffer pH or the acidity Ac";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) =>
        LimeReadings.BufferPh(sample, [SoilBuffer.Mehlich])
        ?? (sample.AcidityPer100CubicCentimeters is { } acidity ? EndPh - (acidity / AcidityPerPh) : null);

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        targetPh < EndPh
            ? null
            : FindingCatalog.Create(
                LimingCodes.TargetTooHigh,
                ("method", MethodName),
                ("limit", $"below pH {LimeText.Ph(EndPh)}"),
                ("target", LimeText.Ph(targetPh))
            );

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        ExactUnits.PoundsPerShortTon
        * LimeMath.NorthCarolinaTonsPerAcre(Acidity(reading), sample.WaterPh!.Value, targetPh, EndPh);

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        string acidity = Amounts.Print(Acidity(reading), 3);
        string endPh = LimeText.Ph(EndPh);
        yield return LimingFormulas
            .All["nc-lime-acidity"]
            .Line(
                $"{acidity} meq/100 cm3",
                ("acidity per pH", Amounts.Print(AcidityPerPh, 3)),
                ("end pH", endPh),
                ("buffer pH", Amounts.Print(reading, 3))
            );
        yield return LimingFormulas
            .All["nc-lime-rate"]
            .Line(
                $"{LimeText.Tons(PoundsPerAcre(reading, sample, targetPh)!.Value)} ton/ac",
                ("Ac", acidity),
                ("target", LimeText.Ph(targetPh)),
                ("pH", LimeText.Ph(sample.WaterPh!.Value)),
                ("end pH", endPh)
            );
    }

    private static double Acidity(double bufferPh) => LimeMath.NorthCarolinaAcidity(bufferPh, EndPh, AcidityPerPh);
}
