using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>ton/ac = Ac x (target - pH) / (end - pH), Ac from the Mehlich buffer pH or as printed.</summary>
internal sealed class NorthCarolinaFormula(CsvRow method) : LimeFormula(method)
{
    private static readonly ImmutableArray<SoilBuffer> Buffers = [SoilBuffer.Mehlich];

    private readonly double endPh = LimingConstants.All["nc-end-ph"];

    private readonly double acidityPerPh = LimingConstants.All["nc-acidity-per-ph"];

    internal override string Reads => "Mehlich buffer pH or the acidity Ac";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) =>
        LimeReadings.BufferPh(sample, Buffers)
        ?? (sample.AcidityPer100CubicCentimeters is { } acidity ? endPh - (acidity / acidityPerPh) : null);

    internal override bool Holds(LimeSample sample, double targetPh) => targetPh < endPh;

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        Holds(sample, targetPh)
            ? null
            : FindingCatalog.Create(
                LimingCodes.TargetTooHigh,
                ("method", MethodName),
                ("limit", $"below pH {LimeText.Ph(endPh)}"),
                ("target", LimeText.Ph(targetPh))
            );

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh) =>
        ExactUnits.PoundsPerShortTon
        * LimeMath.NorthCarolinaTonsPerAcre(Acidity(reading), sample.WaterPh!.Value, targetPh, endPh);

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        string acidity = Amounts.Print(Acidity(reading), 3);
        string end = LimeText.Ph(endPh);
        yield return LimingFormulas
            .All["nc-lime-acidity"]
            .Line(
                $"{acidity} meq/100 cm3",
                ("acidity per pH", Amounts.Print(acidityPerPh, 3)),
                ("end pH", end),
                ("buffer pH", Amounts.Print(reading, 3))
            );
        yield return LimingFormulas
            .All["nc-lime-rate"]
            .Line(
                $"{LimeText.Tons(PoundsPerAcre(reading, sample, targetPh)!.Value)} ton/ac",
                ("Ac", acidity),
                ("target", LimeText.Ph(targetPh)),
                ("pH", LimeText.Ph(sample.WaterPh!.Value)),
                ("end pH", end)
            );
    }

    private double Acidity(double bufferPh) => LimeMath.NorthCarolinaAcidity(bufferPh, endPh, acidityPerPh);
}
