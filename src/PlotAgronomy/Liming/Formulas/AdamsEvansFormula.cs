using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Adams and Evans: the CEC from the acidity of their buffer, the lime from the CEC and the acid share that has to
/// go.</summary>
internal sealed class AdamsEvansFormula(CsvRow method) : LimeFormulaBy<AdamsEvansLimeKernel>(method)
{
    private readonly ImmutableArray<SoilBuffer> buffers = LimeReadings.Buffers(method);

    internal override string Reads => $"{LimeReadings.InWords(buffers)} buffer pH";

    internal override bool ReadsPh => true;

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(PlotSoil soil) => LimeReadings.BufferPh(soil, buffers);

    internal override bool SaysWhyNoRate => true;

    internal override LimeRemarks MayRemark => LimeRemarks.CapacityOutside | LimeRemarks.NeedOutside;

    internal override (double LowestPh, double LowestReadingWithoutPh) Domain(double targetPh) =>
        (AdamsEvans.LowestPhTo(targetPh), double.NegativeInfinity);

    internal override Finding Refusal(string waterPh, double targetPh) =>
        AdamsEvans.Refusal(MethodName, waterPh, targetPh);

    internal override AdamsEvansLimeKernel KernelTo(double targetPh, SoilTexture? texture) => AdamsEvans.KernelTo(targetPh);

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
        KernelFor(soil, targetPh).PoundsPerAcre(reading, WaterPh(soil), out var remarks);
        if (remarks.HasFlag(LimeRemarks.CapacityOutside))
        {
            yield return FindingCatalog.Create(
                LimingCodes.CecOutside,
                ("cec", Amounts.Print(capacity, 1)),
                ("limit", Amounts.Print(AdamsEvans.HighestCapacity, 0)),
                ("method", MethodName)
            );
        }
        else if (remarks.HasFlag(LimeRemarks.NeedOutside))
        {
            yield return FindingCatalog.Create(
                LimingCodes.NeedAboveDomain,
                ("need", Amounts.Print(AdamsEvans.TonsPerAcre(capacity, WaterPh(soil), targetPh), 2)),
                ("limit", Amounts.Print(AdamsEvans.HighestNeed, 0)),
                ("method", MethodName)
            );
        }
    }

    private static double Capacity(double bufferPh, PlotSoil soil) => AdamsEvans.Capacity(bufferPh, soil.PhInWater!.Value);
}
