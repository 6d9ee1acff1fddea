using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>Vermont's table of steps by soil pH and reactive aluminum (modified Morgan).</summary>
internal sealed class VermontFormula(CsvRow method) : LimeFormulaBy<VermontLimeKernel>(method)
{
    private static readonly Lazy<VermontStep[]> Steps = new(() =>
        [.. Table.Read("Liming/Data/vermont.csv", VermontStep.FromRow)]
    );

    internal override ImmutableArray<double> Targets { get; } = [LimingConstants.All["vt-target"]];

    internal override string Reads => "reactive aluminum in ppm (modified Morgan)";

    internal override bool NeedsWaterPh => true;

    internal override double? ReadingOf(PlotSoil soil) => soil.AluminumPpm;

    internal override VermontLimeKernel KernelTo(double targetPh, SoilTexture? texture) => new(Steps.Value);

    internal override IEnumerable<WorkedLine> Work(double reading, PlotSoil soil, double targetPh)
    {
        yield return LimeTableLines.Row(
            LimeTableLines.BaseRate,
            $"pH {LimeText.Ph(soil.PhInWater!.Value)}, aluminum {Amounts.Print(reading, 0)} ppm: "
                + $"{LimeText.Tons(PoundsPerAcre(reading, soil, targetPh)!.Value)} ton/ac",
            KernelFor(soil, targetPh).StepOf(reading, WaterPh(soil)).Origin
        );
    }
}
