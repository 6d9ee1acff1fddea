using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Liming;

/// <summary>Adams-Evans (LIME-AE1): H = 8 x (8.00 - B); pH = 7.79 - 5.55 Hs + 2.27 Hs2; CEC = H / Hs; ton/ac of ag lime = 0.75 x CEC x (Hs1 - Hs2).</summary>
internal sealed class AdamsEvansFormula(CsvRow method) : LimeFormula
{
    private readonly ImmutableArray<SoilBuffer> buffers = LimeReadings.Buffers(method);

    internal override string Reads => $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) => LimeReadings.BufferPh(sample, buffers);

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh)
    {
        double now = Saturation(sample.WaterPh!.Value);
        double tons = LimeConstants.Of("ae-ag-lime-per-meq") * Capacity(reading, now) * (now - Saturation(targetPh));
        return double.IsFinite(tons) && now > 0 && Capacity(reading, now) < LimeConstants.Of("ae-highest-cec") && tons < LimeConstants.Of("ae-highest-need")
            ? tons * LimeText.PoundsPerTon : null;
    }

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        double now = Saturation(sample.WaterPh!.Value);
        double then = Saturation(targetPh);
        double capacity = Capacity(reading, now);
        yield return new("Acidity H", "8 x (8.00 - buffer pH)", $"8 x (8.00 - {Amounts.Print(reading, 2)}) = {Amounts.Print(Acidity(reading), 3)} meq/100 g", "LIME-AE1");
        yield return new("Acid share now and at the target", "root of pH = 7.79 - 5.55 Hs + 2.27 Hs2", $"{Amounts.Print(now, 4)} and {Amounts.Print(then, 4)}", "LIME-AE1");
        yield return new("CEC", "H / acid share now", $"{Amounts.Print(capacity, 3)} meq/100 g", "LIME-AE1");
        yield return new("Base rate", "0.75 x CEC x (acid share now - at the target)", $"{Amounts.Print(LimeConstants.Of("ae-ag-lime-per-meq") * capacity * (now - then), 3)} ton/ac", "LIME-AE1");
    }

    internal override IEnumerable<Finding> Findings(double reading, LimeSample sample, double targetPh)
    {
        double now = Saturation(sample.WaterPh!.Value);
        double capacity = Capacity(reading, now);
        double tons = LimeConstants.Of("ae-ag-lime-per-meq") * capacity * (now - Saturation(targetPh));
        if (capacity >= LimeConstants.Of("ae-highest-cec"))
        {
            yield return FindingCatalog.Create("lime-cec-outside", ("cec", Amounts.Print(capacity, 1)), ("limit", Amounts.Print(LimeConstants.Of("ae-highest-cec"), 0)), ("method", "Adams-Evans"));
        }
        else if (tons >= LimeConstants.Of("ae-highest-need"))
        {
            yield return FindingCatalog.Create("lime-need-above-domain", ("need", Amounts.Print(tons, 2)), ("limit", Amounts.Print(LimeConstants.Of("ae-highest-need"), 0)), ("method", "Adams-Evans"));
        }
    }

    private static double Acidity(double bufferPh) => LimeConstants.Of("ae-acidity-per-ph") * (LimeConstants.Of("ae-start-ph") - bufferPh);

    private static double Capacity(double bufferPh, double saturation) => Acidity(bufferPh) / saturation;

    private static double Saturation(double ph) =>
        LimeMath.AcidSaturation(ph, LimeConstants.Of("ae-ph-constant"), LimeConstants.Of("ae-ph-linear"), LimeConstants.Of("ae-ph-square"));
}
