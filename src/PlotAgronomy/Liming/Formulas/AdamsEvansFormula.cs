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

    internal override double? ReadingOf(PlotSoil soil) => LimeReadings.BufferPh(soil, buffers);

    internal override bool SaysWhyNoRate => true;

    internal override bool Holds(PlotSoil soil, double targetPh) => AdamsEvans.Holds(soil.PhInWater!.Value, targetPh);

    internal override Finding? Refusal(PlotSoil soil, double targetPh) =>
        AdamsEvans.Refusal(MethodName, soil.PhInWater!.Value, targetPh);

    internal override double? PoundsPerAcre(double reading, PlotSoil soil, double targetPh)
    {
        double tons = TonsPerAcre(reading, soil, targetPh);
        return Capacity(reading, soil) < AdamsEvans.HighestCapacity && tons < AdamsEvans.HighestNeed
            ? tons * ExactUnits.PoundsPerShortTon
            : null;
    }

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        double ph = soil.PhInWater!.Value;
        return
        [
            .. AdamsEvans.CapacityLines(reading, ph),
            .. AdamsEvans.RateLines(LimeTableLines.BaseRate, Capacity(reading, soil), ph, targetPh),
        ];
    }

    internal override IEnumerable<Finding> Findings(double reading, PlotSoil soil, double targetPh)
    {
        double capacity = Capacity(reading, soil);
        double tons = TonsPerAcre(reading, soil, targetPh);
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

    private static double Capacity(double bufferPh, PlotSoil soil) => AdamsEvans.Capacity(bufferPh, soil.PhInWater!.Value);

    private static double TonsPerAcre(double bufferPh, PlotSoil soil, double targetPh) =>
        AdamsEvans.TonsPerAcre(Capacity(bufferPh, soil), soil.PhInWater!.Value, targetPh);
}
