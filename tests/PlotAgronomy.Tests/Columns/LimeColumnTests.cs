using PlotAgronomy.Columns;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Tests.Columns;

/// <summary>A column gives, row by row, what the method gives: the method is the check, whose own checks lie in Liming.</summary>
public class LimeColumnTests
{
    private const int RandomRows = 400;

    private static readonly double[] OddPhs = [double.NaN, 0, -1, 14, 14.5, double.PositiveInfinity, double.NegativeInfinity, double.Epsilon];

    private static readonly double[] OddReadings = [double.NaN, 0, -0.5, 14.5, 6000, double.PositiveInfinity, double.NegativeInfinity];

    public static TheoryData<string> Methods => [.. LimeMethod.All.Concat(LimeMethod.Unchecked).Select(m => m.Id)];

    [Fact]
    public void Every_method_of_the_catalog_is_asked() => Assert.True(Methods.Count >= 25);

    [Theory, MemberData(nameof(Methods))]
    public void Every_row_is_what_the_method_gives(string id)
    {
        var method = LimeMethod.Find(id);
        var random = new Random(id.Length * 7919);
        foreach (double target in TargetsOf(method))
        {
            var column = LimeColumn.ForMethod(method, target, ClassOf(method), TextureOf(method));
            var (waterPh, reading) = Rows(method, random);
            AssertEqualsCalls(column, ClassOf(method), TextureOf(method), waterPh, reading);
        }
    }

    [Theory, MemberData(nameof(Methods))]
    public void Values_just_on_and_beside_a_limit_are_what_the_method_gives(string id)
    {
        var method = LimeMethod.Find(id);
        double target = TargetsOf(method)[^2];
        double[] limits = [method.LowestReading, method.HighestReading, target, target - (method.NoLimeWithinPh ?? 0.2), method.OnlyBelowWaterPh ?? 6, 4, 5, 6.5, 7, 7.5, 5.55, 5.65, 40, 70];
        double[] near = [.. limits.SelectMany(Beside)];
        double[] waterPh = [.. near.SelectMany(_ => near)];
        double[] reading = [.. near.SelectMany(x => near.Select(_ => x))];
        AssertEqualsCalls(LimeColumn.ForMethod(method, target, ClassOf(method), TextureOf(method)), ClassOf(method), TextureOf(method), waterPh, reading);
    }

    [Theory, MemberData(nameof(Methods))]
    public void Another_soil_class_or_texture_is_what_the_method_gives(string id)
    {
        var method = LimeMethod.Find(id);
        var random = new Random(17);
        double target = TargetsOf(method)[0];
        var (waterPh, reading) = Rows(method, random, rows: 40);
        foreach (var soilClass in new SoilClass?[] { null, SoilClass.Mineral, SoilClass.MineralOrganic, SoilClass.Organic })
        {
            foreach (var texture in new SoilTexture?[] { null, SoilTexture.Sand, SoilTexture.Silt, SoilTexture.ClayLoam })
            {
                AssertEqualsCalls(LimeColumn.ForMethod(method, target, soilClass, texture), soilClass, texture, waterPh, reading);
            }
        }
    }

    [Theory, MemberData(nameof(Methods))]
    public void Every_buffer_of_a_method_has_its_own_rule_of_what_contradicts(string id)
    {
        var method = LimeMethod.Find(id);
        var (waterPh, reading) = Rows(method, new Random(5), rows: 200);
        foreach (var buffer in method.Buffers)
        {
            var column = LimeColumn.ForMethod(method, TargetsOf(method)[0], ClassOf(method), TextureOf(method), buffer);
            Assert.Equal(buffer, column.Buffer);
            AssertEqualsCalls(column, ClassOf(method), TextureOf(method), waterPh, reading);
        }
    }

    [Fact]
    public void Each_status_is_reached()
    {
        var column = LimeColumn.ForMethod(LimeMethod.Oregon, 6.4);
        double[] waterPh = [5.4, 6.4, 4.2, double.NaN, 5.4, 6.6, 4.9, 20];
        double[] reading = [6.0, 6.9, 4.3, 6.0, double.NaN, 5.6, 7.2, 6.0];
        var (rates, status, flags) = LimeRow.Answers(column, waterPh, reading);
        // LIME-S10, Sikora table, 6.0 to pH 6.4: 3.5 ton/ac.
        Assert.Equal(7000, rates[0]);
        Assert.Equal([RowStatus.Answered, RowStatus.NoneNeeded, RowStatus.OutsideDomain, RowStatus.Answered, RowStatus.Missing, RowStatus.Implausible, RowStatus.Implausible, RowStatus.Implausible], status);
        Assert.Equal(0, rates[1]);
        Assert.All([2, 4, 5, 6, 7], row => Assert.True(double.IsNaN(rates[row])));
        Assert.Equal("lime-ph-missing", column.RowFindings.In(flags[3]).Single().Code);
        Assert.Equal("soil-ph-buffer-swapped", column.RowFindings.In(flags[5]).Single().Code);
        Assert.Equal("soil-ph-buffer-contradict", column.RowFindings.In(flags[6]).Single().Code);
        Assert.Equal("column-value-impossible", column.RowFindings.In(flags[7]).Single().Code);
    }

    [Fact]
    public void What_holds_for_all_rows_is_said_once()
    {
        var column = LimeColumn.ForMethod(LimeMethod.Find("texture-fallback"), 6.5, texture: SoilTexture.Silt);
        Assert.Contains(column.Findings, f => f.Code == LimingCodes.TextureTakenAs);
        Assert.Contains(LimeColumn.ForMethod(LimeMethod.Find("kansas-mf2586"), 6.8).Findings, f => f.Code == "data-from-memory");
        Assert.True(column.ReadsWaterPh);
    }

    [Theory, MemberData(nameof(Methods))]
    public void Published_rates_are_those_of_the_call(string id)
    {
        var method = LimeMethod.Find(id);
        var column = LimeColumn.ForMethod(method, TargetsOf(method)[0], ClassOf(method), TextureOf(method));
        var (waterPh, reading) = Rows(method, new Random(23));
        var (rates, status, _) = LimeRow.Answers(column, waterPh, reading);
        double[] published = new double[rates.Length];
        column.Published(rates, published);
        for (int i = 0; i < rates.Length; i++)
        {
            double expected = status[i] is RowStatus.Answered or RowStatus.NoneNeeded
                ? LimeRow.Call(column, ClassOf(method), TextureOf(method), waterPh[i], reading[i])!.Published!.OfBasis.PoundsPerAcre
                : double.NaN;
            Assert.Equal(BitConverter.DoubleToInt64Bits(expected), BitConverter.DoubleToInt64Bits(published[i]));
        }
    }

    private static void AssertEqualsCalls(LimeColumn column, SoilClass? soilClass, SoilTexture? texture, double[] waterPh, double[] reading)
    {
        var (rates, status, flags) = LimeRow.Answers(column, waterPh, reading);
        var wrong = new List<string>();
        for (int i = 0; i < waterPh.Length && wrong.Count < 5; i++)
        {
            var need = LimeRow.Call(column, soilClass, texture, waterPh[i], reading[i]);
            if (LimeRow.Difference(column, need, rates[i], status[i], flags[i]) is { } difference)
            {
                wrong.Add($"{column}, pH {waterPh[i]:R}, reading {reading[i]:R}: {difference}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }

    private static double[] TargetsOf(LimeMethod method) =>
        method.TargetPhs.IsEmpty ? [5.5, 6.0, 6.4, 6.5, 6.6, 7.0] : [.. method.TargetPhs, method.TargetPhs[0] + 0.05];

    private static SoilClass? ClassOf(LimeMethod method) => method.Soils.Contains(SoilClass.Mineral) ? null : SoilClass.Organic;

    private static SoilTexture? TextureOf(LimeMethod method) => method.Formula is TextureFormula ? SoilTexture.SiltLoam : null;

    /// <summary>A grid over and beyond the readings a method covers, rows drawn there, and values that cannot be.</summary>
    private static (double[] WaterPh, double[] Reading) Rows(LimeMethod method, Random random, int rows = RandomRows)
    {
        double span = method.HighestReading - method.LowestReading;
        var pairs = new List<(double WaterPh, double Reading)>();
        pairs.AddRange(from ph in Enumerable.Range(0, 12) from step in Enumerable.Range(-2, 25) select (4 + (0.3 * ph), Math.Round(method.LowestReading + (span * step / 20), 2, MidpointRounding.ToEven)));
        pairs.AddRange(Enumerable.Range(0, rows).Select(_ => (3.5 + (4 * random.NextDouble()), method.LowestReading - (0.1 * span) + (1.2 * span * random.NextDouble()))));
        pairs.AddRange(from ph in OddPhs from reading in OddReadings.Append(method.LowestReading + (span / 2)) select (ph, reading));
        pairs.AddRange(OddReadings.Select(reading => (5.2, reading)));
        return ([.. pairs.Select(p => p.WaterPh)], [.. pairs.Select(p => p.Reading)]);
    }

    private static IEnumerable<double> Beside(double limit) =>
        [limit, Math.BitIncrement(limit), Math.BitDecrement(limit), limit * (1 + 0.9e-9), limit * (1 - 0.9e-9), limit * (1 + 1.1e-9), limit * (1 - 1.1e-9), limit + 0.01, limit - 0.01];
}
