using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Adams and Evans: the CEC from the acidity of their buffer, the lime from the CEC and the acid share that has to
/// go.</summary>
internal sealed class AdamsEvansFormula(CsvRow method) : LimeFormula(method)
{
    private readonly ImmutableArray<SoilBuffer> buffers = LimeReadings.Buffers(method);

    internal override string Reads => $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(LimeSample sample) => LimeReadings.BufferPh(sample, buffers);

    internal override bool SaysWhyNoRate => true;

    internal override bool Holds(LimeSample sample, double targetPh) => AdamsEvans.Holds(sample.WaterPh!.Value, targetPh);

    internal override Finding? Refusal(LimeSample sample, double targetPh) =>
        AdamsEvans.Refusal(MethodName, sample.WaterPh!.Value, targetPh);

    internal override double? PoundsPerAcre(double reading, LimeSample sample, double targetPh)
    {
        double tons = TonsPerAcre(reading, sample, targetPh);
        return Capacity(reading, sample) < AdamsEvans.HighestCapacity && tons < AdamsEvans.HighestNeed
            ? tons * ExactUnits.PoundsPerShortTon
            : null;
    }

    internal override IEnumerable<WorkedLine> Work(double reading, LimeSample sample, double targetPh)
    {
        double ph = sample.WaterPh!.Value;
        return
        [
            .. AdamsEvans.CapacityLines(reading, ph),
            .. AdamsEvans.RateLines(LimeTableLines.BaseRate, Capacity(reading, sample), ph, targetPh),
        ];
    }

    internal override IEnumerable<Finding> Findings(double reading, LimeSample sample, double targetPh)
    {
        double capacity = Capacity(reading, sample);
        double tons = TonsPerAcre(reading, sample, targetPh);
        if (capacity >= AdamsEvans.HighestCapacity)
        {
            yield return FindingCatalog.Create(
                LimingCodes.CecOutside,
                ("cec", Amounts.Print(capacity, 1)),
                ("limit", Amounts.Print(AdamsEvans.HighestCapacity, 0)),
                ("method", MethodName)
            );
        }
        else if (tons >= AdamsEvans.HighestNeed)
        {
            yield return FindingCatalog.Create(
                LimingCodes.NeedAboveDomain,
                ("need", Amounts.Print(tons, 2)),
                ("limit", Amounts.Print(AdamsEvans.HighestNeed, 0)),
                ("method", MethodName)
            );
        }
    }

    private static double Capacity(double bufferPh, LimeSample sample) => AdamsEvans.Capacity(bufferPh, sample.WaterPh!.Value);

    private static double TonsPerAcre(double bufferPh, LimeSample sample, double targetPh) =>
        AdamsEvans.TonsPerAcre(Capacity(bufferPh, sample), sample.WaterPh!.Value, targetPh);
}
