using PlotAgronomy.Columns;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Benchmarks;

/// <summary>Lime by Oregon's table, phosphate and potash of browsed corn by Tri-State 2020, of reports as a laboratory's list holds
/// them: as columns, by a loop written by hand, and by a typed call for each.</summary>
internal sealed class ManyReports
{
    /// <summary>Rows whose answers stay in the cache.</summary>
    private const int Block = 4_096;

    private const double TargetPh = 6.4;

    private static readonly RecommendationSystem System = RecommendationSystem.Find("TS-2020");
    private static readonly CropUse Corn = CropUse.Browsed(CropRow.Corn);

    private readonly double[] waterPh;
    private readonly double[] buffer;
    private readonly double[] phosphorus;
    private readonly double[] potassium;
    private readonly double[] capacity;
    private readonly PlotSoil[] soils;
    private readonly (double[] Rates, RowStatus[] Status, ulong[] Flags) lime;
    private readonly (double[] Rates, RowStatus[] Status, ulong[] Flags) phosphate;
    private readonly (double[] Rates, RowStatus[] Status, ulong[] Flags) potash;
    private readonly double[] oregonRates = new double[22];

    private readonly LimeColumn limes = LimeColumn.ForMethod(LimeMethod.Oregon, TargetPh);
    private readonly NeedColumn phosphates;
    private readonly NeedColumn potashes;

    /// <param name="rows">Reports.</param>
    /// <param name="typed">How many of them are also made as objects.</param>
    internal ManyReports(int rows, int typed)
    {
        var known = PlotSoil.For(new SoilReport { Laboratory = "benchmark" });
        phosphates = NeedColumn.ForPhosphate(System, Corn, Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, known);
        potashes = NeedColumn.ForPotash(System, Corn, Extractant.Mehlich3, SoilTestUnit.PartsPerMillion, known);
        (lime, phosphate, potash) = (Room(rows), Room(rows), Room(rows));
        var random = new Random(1);
        waterPh = Draw(rows, () => 4.8 + (2.2 * random.NextDouble()));
        buffer = [.. waterPh.Select(ph => Math.Min(7.1, ph + 0.1 + (1.1 * random.NextDouble())))];
        phosphorus = Draw(rows, () => 60 * random.NextDouble());
        potassium = Draw(rows, () => 20 + (230 * random.NextDouble()));
        capacity = Draw(rows, () => 2 + (23 * random.NextDouble()));
        soils = [.. Enumerable.Range(0, typed).Select(SoilOf)];
        foreach (var read in new[] { buffer, phosphorus, potassium })
        {
            for (int i = 0; i < rows / 40; i++)
            {
                read[random.Next(rows)] = double.NaN;
            }
        }

        double[] printed = [.. Enumerable.Range(48, oregonRates.Length).Select(tenths => tenths / 10.0)];
        double[] unknown = [.. printed.Select(_ => double.NaN)];
        limes.Rates(unknown, printed, oregonRates, new RowStatus[printed.Length], new ulong[printed.Length]);
    }

    internal int Rows => waterPh.Length;

    internal int Typed => soils.Length;

    internal void Limes(int from, int to) =>
        limes.Rates(waterPh.AsSpan()[from..to], buffer.AsSpan()[from..to], lime.Rates.AsSpan()[from..to], lime.Status.AsSpan()[from..to], lime.Flags.AsSpan()[from..to]);

    internal void Phosphates(int from, int to) =>
        phosphates.Rates(phosphorus.AsSpan()[from..to], [], phosphate.Rates.AsSpan()[from..to], phosphate.Status.AsSpan()[from..to], phosphate.Flags.AsSpan()[from..to]);

    internal void Potashes(int from, int to) =>
        potashes.Rates(potassium.AsSpan()[from..to], capacity.AsSpan()[from..to], potash.Rates.AsSpan()[from..to], potash.Status.AsSpan()[from..to], potash.Flags.AsSpan()[from..to]);

    internal void LimesByHand() => HandLoops.Oregon(oregonRates, TargetPh, waterPh, buffer, lime.Rates, lime.Status, lime.Flags);

    internal void PhosphatesByHand() => HandLoops.Phosphate(phosphorus, phosphate.Rates, phosphate.Status, phosphate.Flags);

    internal void PotashesByHand() => HandLoops.Potash(potassium, capacity, potash.Rates, potash.Status, potash.Flags);

    internal void AsColumns() => AsColumns(0, Rows);

    internal void AsColumnsByTwoThreads() =>
        Parallel.For(0, 2, new ParallelOptions { MaxDegreeOfParallelism = 2 }, half => AsColumns(half * (Rows / 2), (half + 1) * (Rows / 2)));

    /// <summary>Block after block, the answers of the last one written over, as a program does that passes them on.</summary>
    internal void AsColumnsByBlocks()
    {
        for (int from = 0; from < Rows; from += Block)
        {
            int rows = Math.Min(Block, Rows - from);
            limes.Rates(waterPh.AsSpan(from, rows), buffer.AsSpan(from, rows), lime.Rates.AsSpan(0, rows), lime.Status.AsSpan(0, rows), lime.Flags.AsSpan(0, rows));
            phosphates.Rates(phosphorus.AsSpan(from, rows), [], phosphate.Rates.AsSpan(0, rows), phosphate.Status.AsSpan(0, rows), phosphate.Flags.AsSpan(0, rows));
            potashes.Rates(potassium.AsSpan(from, rows), capacity.AsSpan(from, rows), potash.Rates.AsSpan(0, rows), potash.Status.AsSpan(0, rows), potash.Flags.AsSpan(0, rows));
        }
    }

    internal void ByHand()
    {
        LimesByHand();
        PhosphatesByHand();
        PotashesByHand();
    }

    /// <summary>A typed call for lime and one for both nutrients, for each report that was made.</summary>
    internal double TypedCalls() => TypedLimes() + TypedNeeds();

    internal double TypedCallsByTwoThreads()
    {
        double[] pounds = new double[2];
        Parallel.For(0, 2, new ParallelOptions { MaxDegreeOfParallelism = 2 }, half =>
        {
            var own = soils.AsSpan(half * (Typed / 2), Typed / 2);
            pounds[half] = TypedLimes(own) + TypedNeeds(own);
        });
        return pounds.Sum();
    }

    internal double TypedLimes() => TypedLimes(soils);

    internal double TypedNeeds() => TypedNeeds(soils);

    private static double TypedLimes(ReadOnlySpan<PlotSoil> soils)
    {
        double pounds = 0;
        foreach (var soil in soils)
        {
            pounds += LimeMethod.Oregon.NeedFor(soil, TargetPh).Rate?.OfBasis.PoundsPerAcre ?? 0;
        }

        return pounds;
    }

    private static double TypedNeeds(ReadOnlySpan<PlotSoil> soils)
    {
        double pounds = 0;
        foreach (var soil in soils)
        {
            var answer = System.Recommend(soil, Corn);
            pounds += answer.Phosphate!.Rate.PoundsPerAcre + answer.Potash!.Rate.PoundsPerAcre;
        }

        return pounds;
    }

    private void AsColumns(int from, int to)
    {
        Limes(from, to);
        Phosphates(from, to);
        Potashes(from, to);
    }

    private static double[] Draw(int rows, Func<double> value) => [.. Enumerable.Range(0, rows).Select(_ => value())];

    private static (double[] Rates, RowStatus[] Status, ulong[] Flags) Room(int rows) => (new double[rows], new RowStatus[rows], new ulong[rows]);

    private PlotSoil SoilOf(int row) =>
        PlotSoil.For(new SoilReport
        {
            Laboratory = "benchmark",
            WaterPh = WaterPh.FromValue(waterPh[row]),
            BufferPhs = [BufferPh.FromValue(buffer[row], SoilBuffer.Sikora)],
            Readings =
            [
                SoilReading.FromPrinted(SoilAnalyte.Phosphorus, phosphorus[row], SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
                SoilReading.FromPrinted(SoilAnalyte.Potassium, potassium[row], SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
            ],
        }) with
        {
            ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(capacity[row]),
        };
}
