using PlotAgronomy.Columns;
using PlotAgronomy.Liming;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Columns;

/// <summary>What every column promises: nothing from the heap, slices like the whole, threads side by side, spans of one
/// length.</summary>
public class ColumnPromiseTests
{
    private const int Rows = 10_000;

    private static readonly double[] WaterPhs = Draw(1, 4, 7.5);
    private static readonly double[] Buffers = Draw(2, 4.5, 7.2);
    private static readonly double[] Percents = Draw(3, -1, 60);
    private static readonly double[] Amounts = Draw(4, -5, 300);

    public static TheoryData<string> Everything => [.. LimeMethod.All.Concat(LimeMethod.Unchecked).Select(m => m.Id), "bulk seed", "seed density", "spreader", "exchange capacity"];

    [Theory, MemberData(nameof(Everything))]
    public void No_row_takes_anything_from_the_heap(string id)
    {
        var answer = AnswerOf(id);
        var run = ColumnRun.Of(Rows, answer);
        Assert.Equal(0, Allocations.LeastOf(() => answer(0, Rows, run.Values, run.Status, run.Flags)));
    }

    [Theory, MemberData(nameof(Everything))]
    public void A_slice_gives_what_the_whole_gives(string id)
    {
        var answer = AnswerOf(id);
        var whole = ColumnRun.Of(Rows, answer);
        var parts = new ColumnRun(Rows);
        var random = new Random(11);
        for (int from = 0, rows; from < Rows; from += rows)
        {
            rows = Math.Min(random.Next(1, 400), Rows - from);
            answer(from, rows, parts.Values.AsSpan(from, rows), parts.Status.AsSpan(from, rows), parts.Flags.AsSpan(from, rows));
        }

        whole.AssertSame(parts);
    }

    [Theory, MemberData(nameof(Everything))]
    public async Task Threads_use_one_column_side_by_side(string id)
    {
        var answer = AnswerOf(id);
        var alone = ColumnRun.Of(Rows, answer);
        var together = await Task.WhenAll(Enumerable.Range(0, 2).Select(_ => Task.Run(() => ColumnRun.Of(Rows, answer), TestContext.Current.CancellationToken)));
        Assert.All(together, alone.AssertSame);
    }

    [Theory, MemberData(nameof(Everything))]
    public void No_rows_are_no_error(string id) => Assert.Empty(ColumnRun.Of(0, AnswerOf(id)).Values);

    [Theory, MemberData(nameof(Everything))]
    public void A_row_without_a_number_is_not_answered_and_says_why(string id)
    {
        var run = ColumnRun.Of(Rows, AnswerOf(id));
        Assert.True(run.Status.Distinct().Count() >= 3, string.Join(", ", run.Status.Distinct()));
        for (int row = 0; row < Rows; row++)
        {
            bool isNumber = run.Status[row] is RowStatus.Answered or RowStatus.NoneNeeded;
            Assert.Equal(isNumber, double.IsFinite(run.Values[row]));
            Assert.True(isNumber || run.Flags[row] != 0);
            Assert.True(run.Status[row] != RowStatus.NoneNeeded || run.Values[row] == 0);
        }
    }

    [Fact]
    public void Spans_of_unlike_length_are_refused_by_name()
    {
        var column = LimeColumn.ForMethod(LimeMethod.Oregon, 6.4);
        Refused("reading", () => column.Rates(new double[3], new double[2], new double[3], new RowStatus[3], new ulong[3]));
        Refused("rates", () => column.Rates(new double[3], new double[3], new double[4], new RowStatus[3], new ulong[3]));
        Refused("status", () => column.Rates(new double[3], new double[3], new double[3], [], new ulong[3]));
        Refused("flags", () => column.Rates(new double[3], new double[3], new double[3], new RowStatus[3], new ulong[1]));
        Refused("published", () => column.Published(new double[3], new double[2]));
        Refused("hardPercent", () => BulkSeedColumn.ByRule(ViabilityRule.TotalViable).Rates(new double[3], new double[3], new double[3], new double[1], [], new double[3], new RowStatus[3], new ulong[3]));
        Refused("seedsPerPound", () => SeedDensityColumn.Densities(new double[3], new double[1], new double[3], new RowStatus[3], new ulong[3]));
        Refused("swathFeet", () => SpreaderColumn.Rates(new double[3], new double[3], [], new double[3], new RowStatus[3], new ulong[3]));
        Refused("waterPh", () => ExchangeCapacityColumn.ByTerm(AcidityTerm.Clemson).Capacities(new double[3], new double[3], new double[3], [], new double[3], new double[2], new double[3], new RowStatus[3], new ulong[3]));
        Assert.Contains("3 rows", Assert.Throws<ArgumentException>(() => column.Rates(new double[3], new double[2], new double[3], new RowStatus[3], new ulong[3])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_result_over_an_input_is_refused_by_name()
    {
        double[] memory = new double[8];
        var column = LimeColumn.ForMethod(LimeMethod.Oregon, 6.4);
        Refused("rates", () => column.Rates(memory.AsSpan(0, 4), new double[4], memory.AsSpan(3, 4), new RowStatus[4], new ulong[4]));
        Refused("rates", () => column.Rates(new double[4], memory.AsSpan(0, 4), memory.AsSpan(0, 4), new RowStatus[4], new ulong[4]));
        Refused("published", () => column.Published(memory.AsSpan(0, 4), memory.AsSpan(1, 4)));
        column.Published(memory, memory);
        Refused("rates", () => SpreaderColumn.Rates(memory, memory, memory, memory, new RowStatus[8], new ulong[8]));
    }

    [Fact]
    public void A_column_refuses_what_no_row_can_be_asked_with()
    {
        Assert.Throws<ArgumentNullException>(() => LimeColumn.ForMethod(null!, 6.5));
        Assert.Equal("targetPh", Assert.Throws<ArgumentOutOfRangeException>(() => LimeColumn.ForMethod(LimeMethod.Oregon, 12)).ParamName);
        Refused("buffer", () => LimeColumn.ForMethod(LimeMethod.Oregon, 6.4, buffer: SoilBuffer.Mehlich));
        Assert.Equal("texture", Assert.Throws<ArgumentOutOfRangeException>(() => LimeColumn.ForMethod(LimeMethod.Oregon, 6.4, texture: (SoilTexture)99)).ParamName);
        Refused("rule", () => BulkSeedColumn.ByRule(ViabilityRule.Tetrazolium(Fraction.FromPercent(80))));
        Refused("buffer", () => ExchangeCapacityColumn.ByTerm(AcidityTerm.Clemson, SoilBuffer.Mehlich));
        Refused("reading", () => LimeColumn.ForMethod(LimeMethod.Find("texture-fallback"), 6.5).Rates(new double[2], new double[2], new double[2], new RowStatus[2], new ulong[2]));
    }

    private static void Refused(string argument, Action call) => Assert.Equal(argument, Assert.Throws<ArgumentException>(call).ParamName);

    private static ColumnRun.Answer AnswerOf(string id) => id switch
    {
        "bulk seed" => BulkSeed(BulkSeedColumn.ByRule(ViabilityRule.GerminationAndHard)),
        "seed density" => (from, rows, values, status, flags) => SeedDensityColumn.Densities(Amounts.AsSpan(from, rows), Percents.AsSpan(from, rows), values, status, flags),
        "spreader" => (from, rows, values, status, flags) => SpreaderColumn.Rates(Amounts.AsSpan(from, rows), WaterPhs.AsSpan(from, rows), Percents.AsSpan(from, rows), values, status, flags),
        "exchange capacity" => Exchange(ExchangeCapacityColumn.ByTerm(AcidityTerm.MidwestLaboratory)),
        _ => Lime(LimeMethod.Find(id)),
    };

    private static ColumnRun.Answer Lime(LimeMethod method)
    {
        double target = method.TargetPhs.IsEmpty ? 6 : method.TargetPhs[^1];
        var column = LimeColumn.ForMethod(method, target, method.Soils[0], SoilTexture.Loam);
        double[] readings = method.Formula.ReadsPh ? Buffers : Amounts;
        return (from, rows, values, status, flags) =>
            column.Rates(WaterPhs.AsSpan(from, rows), column.ReadsWaterPh ? [] : readings.AsSpan(from, rows), values, status, flags);
    }

    private static ColumnRun.Answer BulkSeed(BulkSeedColumn column) => (from, rows, values, status, flags) =>
        column.Rates(Amounts.AsSpan(from, rows), Percents.AsSpan(from, rows), Percents.AsSpan(from, rows), Percents.AsSpan(from, rows), [], values, status, flags);

    private static ColumnRun.Answer Exchange(ExchangeCapacityColumn column) => (from, rows, values, status, flags) =>
        column.Capacities(Amounts.AsSpan(from, rows), Amounts.AsSpan(from, rows), Amounts.AsSpan(from, rows), [], Buffers.AsSpan(from, rows), WaterPhs.AsSpan(from, rows), values, status, flags);

    /// <summary>Values in a span, some of them 0, not known, or no number that can be.</summary>
    private static double[] Draw(int seed, double low, double high)
    {
        var random = new Random(seed);
        double[] odd = [double.NaN, 0, double.PositiveInfinity];
        return [.. Enumerable.Range(0, Rows).Select(_ => random.Next(20) == 0 ? odd[random.Next(odd.Length)] : low + ((high - low) * random.NextDouble()))];
    }
}
