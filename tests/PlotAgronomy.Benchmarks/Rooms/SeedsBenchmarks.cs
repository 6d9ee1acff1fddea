using BenchmarkDotNet.Attributes;
using PlotAgronomy.Columns;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Benchmarks.Rooms;

/// <summary>Bulk seed that delivers a rate of pure live seed.</summary>
[MemoryDiagnoser]
public class SeedsBenchmarks
{
    private const int Rows = 20_000;

    private static readonly ViabilityRule Rule = ViabilityRule.GerminationAndHard;
    private static readonly BulkSeedColumn Column = BulkSeedColumn.ByRule(Rule);

    private readonly double[] live = Drawn.Between(1, 1, 60, Rows);
    private readonly double[] pure = Drawn.Between(2, 60, 99, Rows);
    private readonly double[] germination = Drawn.Between(3, 60, 90, Rows);
    private readonly double[] hard = Drawn.Between(4, 0, 9, Rows);
    private readonly AnswerColumns answers = new(Rows);
    private readonly PureLiveSeedRate[] targets;
    private readonly SeedAnalysis[] analyses;

    /// <summary>Makes rates and analyses of the rows.</summary>
    public SeedsBenchmarks()
    {
        targets = [.. live.Select(pounds => PureLiveSeedRate.BroadcastPoundsPerAcre(pounds))];
        analyses = [.. Enumerable.Range(0, Rows).Select(AnalysisOf)];
    }

    /// <summary>By a loop written by hand.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Rows)]
    public void ByHand() => HandLoops.BulkSeed(live, pure, germination, hard, answers.Numbers, answers.Status, answers.Flags);

    /// <summary>As a column.</summary>
    [Benchmark(OperationsPerInvoke = Rows)]
    public void AsColumn() => Column.Rates(live, pure, germination, hard, [], answers.Numbers, answers.Status, answers.Flags);

    /// <summary>By the typed call.</summary>
    /// <returns>The pounds of all.</returns>
    [Benchmark(OperationsPerInvoke = Rows)]
    public double Typed() =>
        Enumerable.Range(0, Rows).Sum(row => PureLiveSeed.BulkRate(targets[row], analyses[row], Rule).Bulk.PoundsPerAcre);

    private SeedAnalysis AnalysisOf(int row) =>
        SeedAnalysis.FromFractions(
            Fraction.FromPercent(pure[row]),
            Fraction.FromPercent(germination[row]),
            Fraction.FromPercent(hard[row]));
}
