using BenchmarkDotNet.Attributes;
using PlotAgronomy.Columns;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Benchmarks;

/// <summary>Columns beside loops written by hand, with the same checks and outputs, over 100,000 rows.</summary>
[MemoryDiagnoser]
public class ColumnBenchmarks
{
    private const int Rows = 100_000;

    private readonly double[] waterPh = new double[Rows];
    private readonly double[] buffer = new double[Rows];
    private readonly double[] percent = new double[Rows];
    private readonly double[] some = new double[Rows];
    private readonly double[] much = new double[Rows];
    private readonly double[] answers = new double[Rows];
    private readonly RowStatus[] status = new RowStatus[Rows];
    private readonly ulong[] flags = new ulong[Rows];

    private readonly LimeColumn northCarolina = LimeColumn.ForMethod(LimeMethod.NorthCarolina, 6.5);
    private readonly LimeColumn wisconsin = LimeColumn.ForMethod(LimeMethod.Find("wisconsin-a2809"), 6.5);
    private readonly LimeColumn oregon = LimeColumn.ForMethod(LimeMethod.Oregon, 6.4);
    private readonly BulkSeedColumn bulkSeed = BulkSeedColumn.ByRule(ViabilityRule.GerminationAndHard);
    private readonly ExchangeCapacityColumn exchange = ExchangeCapacityColumn.ByTerm(AcidityTerm.MidwestLaboratory);
    private readonly double[] oregonRates = new double[22];

    /// <summary>Draws rows as reports and tags have them, one in forty without a value.</summary>
    [GlobalSetup]
    public void Draw()
    {
        var random = new Random(1);
        for (int i = 0; i < Rows; i++)
        {
            waterPh[i] = 4.8 + (2.2 * random.NextDouble());
            buffer[i] = Math.Min(7.1, waterPh[i] + 0.1 + (1.1 * random.NextDouble()));
            percent[i] = 60 + (39 * random.NextDouble());
            some[i] = 1 + (19 * random.NextDouble());
            much[i] = 100 + (1900 * random.NextDouble());
            buffer[i] = random.Next(40) == 0 ? double.NaN : buffer[i];
            percent[i] = random.Next(40) == 0 ? double.NaN : percent[i];
        }

        double[] unknown = [.. Enumerable.Repeat(double.NaN, oregonRates.Length)];
        double[] printed = [.. Enumerable.Range(48, oregonRates.Length).Select(tenths => tenths / 10.0)];
        oregon.Rates(unknown, printed, oregonRates, new RowStatus[oregonRates.Length], new ulong[oregonRates.Length]);
    }

    /// <summary>An equation, by hand.</summary>
    [Benchmark]
    public void NorthCarolinaByHand() => HandLoops.NorthCarolina(6.5, waterPh, buffer, answers, status, flags);

    /// <summary>An equation, as a column.</summary>
    [Benchmark]
    public void NorthCarolinaAsColumn() => northCarolina.Rates(waterPh, buffer, answers, status, flags);

    /// <summary>A straight line in two readings, by hand.</summary>
    [Benchmark]
    public void WisconsinByHand() => HandLoops.Wisconsin(waterPh, buffer, answers, status, flags);

    /// <summary>A straight line in two readings, as a column.</summary>
    [Benchmark]
    public void WisconsinAsColumn() => wisconsin.Rates(waterPh, buffer, answers, status, flags);

    /// <summary>A printed table, by hand.</summary>
    [Benchmark]
    public void OregonByHand() => HandLoops.Oregon(oregonRates, 6.4, waterPh, buffer, answers, status, flags);

    /// <summary>A printed table, as a column.</summary>
    [Benchmark]
    public void OregonAsColumn() => oregon.Rates(waterPh, buffer, answers, status, flags);

    /// <summary>Bulk seed, by hand.</summary>
    [Benchmark]
    public void BulkSeedByHand() => HandLoops.BulkSeed(some, percent, percent, some, answers, status, flags);

    /// <summary>Bulk seed, as a column.</summary>
    [Benchmark]
    public void BulkSeedAsColumn() => bulkSeed.Rates(some, percent, percent, some, [], answers, status, flags);

    /// <summary>Spreader rates, by hand.</summary>
    [Benchmark]
    public void SpreaderByHand() => HandLoops.Spreader(percent, some, some, answers, status, flags);

    /// <summary>Spreader rates, as a column.</summary>
    [Benchmark]
    public void SpreaderAsColumn() => SpreaderColumn.Rates(percent, some, some, answers, status, flags);

    /// <summary>Exchange capacity, by hand.</summary>
    [Benchmark]
    public void ExchangeByHand() => HandLoops.Exchange(some, percent, much, buffer, waterPh, answers, status, flags);

    /// <summary>Exchange capacity, as a column.</summary>
    [Benchmark]
    public void ExchangeAsColumn() => exchange.Capacities(some, percent, much, [], buffer, waterPh, answers, status, flags);
}
