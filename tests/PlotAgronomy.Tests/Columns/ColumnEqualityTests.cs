using PlotAgronomy.Columns;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Tests.Columns;

/// <summary>A row gives what the typed call gives, to the last bit; the call's own checks lie in its room.</summary>
public class ColumnEqualityTests
{
    private const int Rows = 4000;

    public static TheoryData<string> Terms => [.. AcidityTerm.All.Concat(AcidityTerm.Unchecked).Select(t => t.Id)];

    [Theory]
    [InlineData(0, 0), InlineData(1, 0), InlineData(0, 1), InlineData(1, 1), InlineData(0.5, 0.25)]
    public void Bulk_rates_are_those_of_the_call(double hardCredit, double dormantCredit)
    {
        var rule = ViabilityRule.Credit(hardCredit, dormantCredit);
        var column = BulkSeedColumn.ByRule(rule);
        var random = new Random(3);
        double[] live = Draw(random, 0, 120), pure = Draw(random, -5, 105), germination = Draw(random, -5, 105), hard = Draw(random, -2, 40), dormant = Draw(random, -1, 15);
        var run = ColumnRun.Of(Rows, (_, _, values, status, flags) => column.Rates(live, pure, germination, hard, dormant, values, status, flags));
        AssertRows(run, i =>
        {
            var analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(pure[i]), Fraction.FromPercent(germination[i]), Fraction.FromPercent(hard[i]), Fraction.FromPercent(dormant[i]));
            var seeding = PureLiveSeed.BulkRate(PureLiveSeedRate.DrilledPoundsPerAcre(live[i]), analysis, rule);
            Assert.Equal(seeding.Findings.Any(f => f.Code == SeedCodes.LowPureLive), column.RowFindings.In(run.Flags[i]).Any(f => f.Code == SeedCodes.LowPureLive));
            return seeding.Bulk.PoundsPerAcre;
        });
    }

    [Fact]
    public void Bulk_rates_take_no_hard_and_dormant_seed_as_none()
    {
        var column = BulkSeedColumn.ByRule(ViabilityRule.TotalViable);
        double[] live = [8], pure = [98], germination = [85];
        var run = ColumnRun.Of(1, (_, _, values, status, flags) => column.Rates(live, pure, germination, [], [], values, status, flags));
        Assert.Equal(8 / (0.98 * 0.85), run.Values[0], 1e-12);
    }

    [Fact]
    public void A_bag_without_living_seed_is_outside_what_can_be_answered()
    {
        var column = BulkSeedColumn.ByRule(ViabilityRule.GerminationOnly);
        var run = ColumnRun.Of(1, (_, _, values, status, flags) => column.Rates([8], [98], [0], [90], [], values, status, flags));
        Assert.Equal(RowStatus.OutsideDomain, run.Status[0]);
        Assert.Equal("column-nothing-alive", column.RowFindings.In(run.Flags[0]).Single().Code);
    }

    [Fact]
    public void Seed_densities_are_those_of_the_call()
    {
        var random = new Random(5);
        double[] live = Draw(random, -1, 200), count = Draw(random, -100, 900_000);
        var run = ColumnRun.Of(Rows, (_, _, values, status, flags) => SeedDensityColumn.Densities(live, count, values, status, flags));
        AssertRows(run, i => SeedDensity.FromRate(PureLiveSeedRate.DrilledPoundsPerAcre(live[i]), SeedCount.FromSeedsPerPound(count[i])).SeedsPerSquareFoot);
    }

    [Fact]
    public void Spreader_rates_are_those_of_the_call()
    {
        var random = new Random(7);
        double[] flow = Draw(random, -1, 3300), pace = Draw(random, -0.5, 22), swath = Draw(random, -1, 130);
        var run = ColumnRun.Of(Rows, (_, _, values, status, flags) => SpreaderColumn.Rates(flow, pace, swath, values, status, flags));
        AssertRows(run, i =>
        {
            var setting = SpreaderSetting.FromFlow(MassFlow.FromPoundsPerMinute(flow[i]), Speed.FromMilesPerHour(pace[i]), Length.FromFeet(swath[i]));
            bool isUnlikely = setting.Findings.Any(f => f.Code == SpreadingCodes.Implausible);
            Assert.Equal(isUnlikely, SpreaderColumn.RowFindings.In(run.Flags[i]).Any(f => f.Code == SpreadingCodes.Implausible));
            return isUnlikely ? double.NaN : setting.Rate.PoundsPerAcre;
        });
    }

    [Theory, MemberData(nameof(Terms))]
    public void Exchange_capacities_are_those_of_the_call(string id)
    {
        var term = AcidityTerm.Find(id);
        foreach (var buffer in term.Buffers)
        {
            var column = ExchangeCapacityColumn.ByTerm(term, buffer);
            var random = new Random(9);
            double[] k = Draw(random, -5, 500), mg = Draw(random, -5, 900), ca = Draw(random, -50, 6000), na = Draw(random, -5, 90), read = Draw(random, 4.5, 8.2), ph = Draw(random, 4, 8.2);
            var run = ColumnRun.Of(Rows, (_, _, values, status, flags) => column.Capacities(k, mg, ca, na, read, ph, values, status, flags));
            AssertRows(run, i =>
            {
                var report = Report(term, buffer, k[i], mg[i], ca[i], na[i], read[i], ph[i]);
                if (SwappedPh.Of(report, report.WaterPh).Any() || double.IsNaN(k[i] + mg[i] + ca[i]))
                {
                    return double.NaN;
                }

                var balance = CationBalance.For(report, term);
                string[] codes = [.. column.RowFindings.In(run.Flags[i]).Select(f => f.Code)];
                Assert.Equal(balance.Findings.Select(f => f.Code).Intersect(column.RowFindings.Codes).Order(StringComparer.Ordinal), codes.Order(StringComparer.Ordinal));
                return balance.Capacity?.Milliequivalents ?? double.NaN;
            });
        }
    }

    /// <summary>The call's number to the last bit; NaN where it throws.</summary>
    private static void AssertRows(ColumnRun run, Func<int, double> call)
    {
        Assert.Contains(RowStatus.Answered, run.Status);
        for (int i = 0; i < run.Values.Length; i++)
        {
            double expected;
            try
            {
                expected = call(i);
            }
            catch (ArgumentException)
            {
                expected = double.NaN;
            }

            Assert.True(BitConverter.DoubleToInt64Bits(expected) == BitConverter.DoubleToInt64Bits(run.Values[i]), $"row {i}: the call gives {expected:R}, the column {run.Values[i]:R} ({run.Status[i]})");
        }
    }

    private static SoilReport Report(AcidityTerm term, SoilBuffer buffer, double k, double mg, double ca, double na, double read, double ph)
    {
        var unit = term.Basis == CationChargeBasis.Per100Grams ? SoilTestUnit.PartsPerMillion : SoilTestUnit.MilligramsPerCubicDecimeter;
        return new()
        {
            Laboratory = "test laboratory",
            WaterPh = double.IsNaN(ph) ? null : WaterPh.FromValue(ph),
            BufferPhs = double.IsNaN(read) ? [] : [BufferPh.FromValue(read, buffer)],
            Readings =
            [
                .. new[] { (SoilAnalyte.Potassium, k), (SoilAnalyte.Magnesium, mg), (SoilAnalyte.Calcium, ca), (SoilAnalyte.Sodium, na) }
                    .Where(p => !double.IsNaN(p.Item2)).Select(p => SoilReading.FromPrinted(p.Item1, p.Item2, unit, Extractant.Mehlich3)),
            ],
        };
    }

    private static double[] Draw(Random random, double low, double high) =>
        [.. Enumerable.Range(0, Rows).Select(_ => random.Next(25) == 0 ? double.NaN : low + ((high - low) * random.NextDouble()))];
}
