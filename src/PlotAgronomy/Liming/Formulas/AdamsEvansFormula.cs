using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>Adams-Evans (LIME-AE1): H = 8 x (8.00 - B); pH = 7.79 - 5.55 Hs + 2.27 Hs2; CEC = H / Hs; ton/ac of ag lime = 0.75 x
/// CEC x (Hs1 - Hs2).</summary>
internal sealed class AdamsEvansFormula(CsvRow method) : LimeFormula
{
    private readonly ImmutableArray<SoilBuffer> buffers = LimeReadings.Buffers(method);

    internal override string Reads => $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) => LimeReadings.BufferPh(sample, buffers);

    internal override Finding? Refusal(LimeSample sample, double targetPh) => AdamsEvans.Refusal(sample.WaterPh!.Value, targetPh);

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh)
    {
        double tons = TonsPerAcre(reading, sample, targetPh);
        return Capacity(reading, sample) < LimingConstants.All["ae-highest-cec"] && tons < LimingConstants.All["ae-highest-need"]
            ? tons * ExactUnits.PoundsPerShortTon
            : null;
    }

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        yield return new(
            "Acidity H",
            "8 x (8.00 - buffer pH)",
            $"8 x (8.00 - {Amounts.Print(reading, 2)}) = {Amounts.Print(AdamsEvans.Acidity(reading), 3)} meq/100 g",
            "LIME-AE1"
        );
        yield return new(
            "Acid share now and at the target",
            "root of pH = 7.79 - 5.55 Hs + 2.27 Hs2",
            $"{Amounts.Print(AdamsEvans.Saturation(sample.WaterPh!.Value), 4)} and "
                + $"{Amounts.Print(AdamsEvans.Saturation(targetPh), 4)}",
            "LIME-AE1"
        );
        yield return new("CEC", "H / acid share now", $"{Amounts.Print(Capacity(reading, sample), 3)} meq/100 g", "LIME-AE1");
        yield return new(
            "Base rate",
            "0.75 x CEC x (acid share now - at the target)",
            $"{Amounts.Print(TonsPerAcre(reading, sample, targetPh), 3)} ton/ac",
            "LIME-AE1"
        );
    }

    internal override IEnumerable<Finding> Findings(double reading, LimeSample sample, double targetPh)
    {
        double capacity = Capacity(reading, sample);
        double tons = TonsPerAcre(reading, sample, targetPh);
        if (capacity >= LimingConstants.All["ae-highest-cec"])
        {
            yield return FindingCatalog.Create(
                "lime-cec-outside",
                ("cec", Amounts.Print(capacity, 1)),
                ("limit", Amounts.Print(LimingConstants.All["ae-highest-cec"], 0)),
                ("method", "Adams-Evans")
            );
        }
        else if (tons >= LimingConstants.All["ae-highest-need"])
        {
            yield return FindingCatalog.Create(
                "lime-need-above-domain",
                ("need", Amounts.Print(tons, 2)),
                ("limit", Amounts.Print(LimingConstants.All["ae-highest-need"], 0)),
                ("method", "Adams-Evans")
            );
        }
    }

    private static double Capacity(double bufferPh, LimeSample sample) =>
        AdamsEvans.Acidity(bufferPh) / AdamsEvans.Saturation(sample.WaterPh!.Value);

    private static double TonsPerAcre(double bufferPh, LimeSample sample, double targetPh) =>
        AdamsEvans.TonsPerAcre(Capacity(bufferPh, sample), sample.WaterPh!.Value, targetPh);
}
