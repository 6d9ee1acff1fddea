using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a column of needs by one kernel.</summary>
internal sealed class NeedRowsBy<TKernel>(TKernel kernel, ReadingSteps steps, double capacityOfAll, NeedRowFlags flags)
    : NeedRows(flags)
    where TKernel : struct, INeedKernel
{
    /// <summary>Rows that are gone through several times while they are still near at hand.</summary>
    private const int RowsAtOnce = 512;

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
            Refuse(tests, capacities, status[rows]);
            if (!found.IsEmpty)
            {
                Remarks(tests, capacities, rates[rows], status[rows], found[rows]);
            }
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

    /// <summary>Calls nothing that is not inlined, so that what the kernel holds stays at hand.</summary>
    private void Rates(ReadOnlySpan<double> tests, ReadOnlySpan<double> capacity, Span<double> rates)
    {
        var sum = kernel;
        for (int i = 0; i < tests.Length; i++)
        {
            double ofRow = CapacityOf(capacity, i);
            rates[i] = IsUsable(tests[i], ofRow) ? sum.Rate(tests[i], ofRow) : double.NaN;
        }
    }

    /// <summary>Says of rows without a rate what is wrong with their values.</summary>
    private void Refuse(ReadOnlySpan<double> tests, ReadOnlySpan<double> capacity, Span<RowStatus> status)
    {
        for (int i = 0, step; (step = status[i..].IndexOf(RowStatus.OutsideDomain)) >= 0; i++)
        {
            i += step;
            if (!IsUsable(tests[i], CapacityOf(capacity, i)))
            {
                status[i] = NeedRowLimits.StatusOfUnusable(tests[i], CapacityOf(capacity, i));
            }
        }
    }

    private void Remarks(
        ReadOnlySpan<double> tests,
        ReadOnlySpan<double> capacity,
        ReadOnlySpan<double> rates,
        ReadOnlySpan<RowStatus> status,
        Span<ulong> found
    )
    {
        var sum = kernel;
        for (int i = 0; i < tests.Length; i++)
        {
            found[i] =
                status[i] <= RowStatus.OutsideDomain
                    ? Flags.Of(sum.Remarks(tests[i], CapacityOf(capacity, i), rates[i]))
                    : Flags.OfUnusable(status[i]);
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

    private bool IsUsable(double reading, double capacity) =>
        NeedRowLimits.CanBeRead(reading) && (!kernel.ReadsCapacity || NeedRowLimits.CanBeCapacity(capacity));

    private double TestOf(double reading) => steps.IsAsPrinted ? reading : steps.From(reading);
}
