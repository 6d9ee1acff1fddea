using BenchmarkDotNet.Attributes;
using PlotAgronomy.Columns;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Exchange capacity by summation, from potassium, magnesium, calcium and a buffer pH.</summary>
[MemoryDiagnoser]
public class SoilBenchmarks
{
    private const int Rows = 20_000;

    private static readonly ExchangeCapacityColumn Column = ExchangeCapacityColumn.ByTerm(AcidityTerm.MidwestLaboratory);

    private readonly double[] potassium = Drawn.Between(1, 50, 400, Rows);
    private readonly double[] magnesium = Drawn.Between(2, 50, 400, Rows);
    private readonly double[] calcium = Drawn.Between(3, 300, 2_000, Rows);
    private readonly double[] buffer = Drawn.Between(4, 6, 7, Rows);
    private readonly double[] waterPh = Drawn.Between(5, 5.2, 6.2, Rows);
    private readonly AnswerColumns answers = new(Rows);
    private readonly SoilReport[] reports;

    /// <summary>Makes a report of each row.</summary>
    public SoilBenchmarks() => reports = [.. Enumerable.Range(0, Rows).Select(ReportOf)];

    /// <summary>By a loop written by hand.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public void ByHand() =>
        HandLoops.Exchange(potassium, magnesium, calcium, buffer, waterPh, answers.Numbers, answers.Status, answers.Flags);

    /// <summary>As a column.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public void AsColumn() =>
        Column.Capacities(potassium, magnesium, calcium, [], buffer, waterPh, answers.Numbers, answers.Status, answers.Flags);

    /// <summary>By the typed call.</summary>
    /// <returns>How many soils have one.</returns>
    [Benchmark(OperationsPerInvoke = Rows)]
    public int Typed() => reports.Count(report => CationBalance.For(report, AcidityTerm.MidwestLaboratory).Capacity is not null);

    private SoilReport ReportOf(int row) =>
        new()
        {
            Laboratory = "benchmark",
            WaterPh = WaterPh.FromValue(waterPh[row]),
            BufferPhs = [BufferPh.FromValue(buffer[row], AcidityTerm.MidwestLaboratory.Buffers[0])],
            Readings =
            [
                Reading(SoilAnalyte.Potassium, potassium[row]),
                Reading(SoilAnalyte.Magnesium, magnesium[row]),
                Reading(SoilAnalyte.Calcium, calcium[row]),
            ],
        };

    private static SoilReading Reading(SoilAnalyte analyte, double ppm) =>
        SoilReading.FromPrinted(analyte, ppm, SoilTestUnit.PartsPerMillion, Extractant.AmmoniumAcetate);
}
