using System.Runtime.Intrinsics;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a column of needs by one kernel.</summary>
internal sealed class NeedRowsBy<TKernel>(TKernel kernel, ReadingSteps steps, double capacityOfAll, NeedRowFlags flags)
    : NeedRows(flags)
    where TKernel : struct, INeedKernel
{
    /// <summary>Rows that are gone through several times while they are still near at hand.</summary>
    private const int RowsAtOnce = 512;

    private readonly NeedRemarks raises = kernel.Raises;

    internal override bool ReadsCapacity { get; } = kernel.ReadsCapacity && double.IsNaN(capacityOfAll);

    internal override void Rates(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> found
    )
    {
        Span<double> converted = stackalloc double[RowsAtOnce];
        for (int start = 0; start < reading.Length; start += RowsAtOnce)
        {
            var rows = start..Math.Min(start + RowsAtOnce, reading.Length);
            var tests = steps.IsAsPrinted ? reading[rows] : Converted(reading[rows], converted);
            var capacities = ReadsCapacity ? capacity[rows] : capacity;
            Rates(tests, capacities, rates[rows]);
            RowStatuses.OfRates(rates[rows], status[rows]);
            var flags = found.IsEmpty ? found : found[rows];
            Remarks(tests, capacities, rates[rows], flags);
            Refuse(tests, capacities, status[rows], flags);
        }
    }

    internal override void Ranges(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> low,
        Span<double> high,
        Span<RowStatus> status,
        Span<ulong> found
    )
    {
        Rates(reading, capacity, low, status, found);
        var sum = kernel;
        for (int i = 0; i < reading.Length; i++)
        {
            double rate = low[i];
            high[i] = rate;
            if (!double.IsNaN(rate))
            {
                double test = TestOf(reading[i]);
                low[i] = sum.Low(test, rate);
                high[i] = sum.High(test, rate);
            }
        }
    }

    /// <summary>Calls nothing that is not inlined, so that what the kernel holds stays at hand. A row that cannot be used is
    /// summed with a reading of 0, and its rate is left out.</summary>
    private void Rates(ReadOnlySpan<double> tests, ReadOnlySpan<double> capacity, Span<double> rates)
    {
        var sum = kernel;
        int row = 0;
        for (; row <= tests.Length - Vector256<double>.Count; row += Vector256<double>.Count)
        {
            var four = Vector256.Create(tests[row..]);
            var capacities = CapacitiesOf(capacity, row);
            var usable = NeedRowLimits.CanBeRead(four);
            usable &= kernel.ReadsCapacity ? NeedRowLimits.CanBeCapacity(capacities) : usable;
            Vector256
                .ConditionalSelect(usable, sum.Rates(four & usable, capacities & usable), Vector256.Create(double.NaN))
                .CopyTo(rates[row..]);
        }

        for (; row < tests.Length; row++)
        {
            double ofRow = CapacityOf(capacity, row);
            rates[row] = IsUsable(tests[row], ofRow) ? sum.Rate(tests[row], ofRow) : double.NaN;
        }
    }

    /// <summary>Says of rows without a rate what is wrong with their values.</summary>
    private void Refuse(ReadOnlySpan<double> tests, ReadOnlySpan<double> capacity, Span<RowStatus> status, Span<ulong> found)
    {
        for (int i = 0, step; (step = status[i..].IndexOf(RowStatus.OutsideDomain)) >= 0; i++)
        {
            i += step;
            if (!IsUsable(tests[i], CapacityOf(capacity, i)))
            {
                status[i] = NeedRowLimits.StatusOfUnusable(tests[i], CapacityOf(capacity, i));
                if (!found.IsEmpty)
                {
                    found[i] = Flags.OfUnusable(status[i]);
                }
            }
        }
    }

    /// <summary>Flags of what the sums notice; those of rows that cannot be used are written over.</summary>
    private void Remarks(
        ReadOnlySpan<double> tests,
        ReadOnlySpan<double> capacity,
        ReadOnlySpan<double> rates,
        Span<ulong> found
    )
    {
        if (raises == NeedRemarks.None)
        {
            found.Clear();
            return;
        }

        var sum = kernel;
        for (int i = 0; i < found.Length; i++)
        {
            double ofRow = CapacityOf(capacity, i);
            found[i] = IsUsable(tests[i], ofRow) ? Flags.Of(sum.Remarks(tests[i], ofRow, rates[i])) : 0;
        }
    }

    /// <summary>Readings in the system's unit; what cannot be read stays as it is.</summary>
    private ReadOnlySpan<double> Converted(ReadOnlySpan<double> reading, Span<double> into)
    {
        for (int i = 0; i < reading.Length; i++)
        {
            into[i] = NeedRowLimits.CanBeRead(reading[i]) ? steps.From(reading[i]) : reading[i];
        }

        return into[..reading.Length];
    }

    private double CapacityOf(ReadOnlySpan<double> capacity, int row) =>
        !kernel.ReadsCapacity ? 0
        : capacity.IsEmpty ? capacityOfAll
        : capacity[row];

    private Vector256<double> CapacitiesOf(ReadOnlySpan<double> capacity, int row) =>
        !kernel.ReadsCapacity ? Vector256<double>.Zero
        : capacity.IsEmpty ? Vector256.Create(capacityOfAll)
        : Vector256.Create(capacity[row..]);

    private bool IsUsable(double reading, double capacity) =>
        NeedRowLimits.CanBeRead(reading) && (!kernel.ReadsCapacity || NeedRowLimits.CanBeCapacity(capacity));

    private double TestOf(double reading) => steps.IsAsPrinted ? reading : steps.From(reading);
}
