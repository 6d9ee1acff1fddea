using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a column of needs by one kernel.</summary>
internal sealed class NeedRowsBy<TKernel>(TKernel kernel, ReadingSteps steps, double capacityOfAll, NeedRowFlags flags)
    : NeedRows(flags)
    where TKernel : struct, INeedKernel
{
    private readonly bool isAsPrinted = steps.IsAsPrinted;

    internal override bool ReadsCapacity { get; } = kernel.ReadsCapacity && double.IsNaN(capacityOfAll);

    internal override void Rates(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> found
    )
    {
        var sum = kernel;
        for (int i = 0; i < reading.Length; i++)
        {
            double ofRow = CapacityOf(capacity, i);
            if (!IsUsable(reading[i], ofRow))
            {
                Refuse(reading[i], ofRow, i, rates, status, found);
                continue;
            }

            double test = TestOf(reading[i]);
            double rate = sum.Rate(test, ofRow);
            rates[i] = rate;
            status[i] = StatusOf(rate);
            if (!found.IsEmpty)
            {
                found[i] = Flags.Of(sum.Remarks(test, ofRow, rate));
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
            if (double.IsNaN(rate))
            {
                high[i] = double.NaN;
                continue;
            }

            double test = TestOf(reading[i]);
            low[i] = sum.Low(test, rate);
            high[i] = sum.High(test, rate);
        }
    }

    private static RowStatus StatusOf(double rate) =>
        rate > 0 ? RowStatus.Answered
        : rate == 0 ? RowStatus.NoneNeeded
        : RowStatus.OutsideDomain;

    private double CapacityOf(ReadOnlySpan<double> capacity, int row) =>
        !kernel.ReadsCapacity ? 0
        : capacity.IsEmpty ? capacityOfAll
        : capacity[row];

    private bool IsUsable(double reading, double capacity) =>
        NeedRowLimits.CanBeRead(reading) && (!kernel.ReadsCapacity || NeedRowLimits.CanBeCapacity(capacity));

    private double TestOf(double reading) => isAsPrinted ? reading : steps.From(reading);

    private void Refuse(
        double reading,
        double capacity,
        int row,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> found
    )
    {
        rates[row] = double.NaN;
        status[row] = NeedRowLimits.StatusOfUnusable(reading, capacity);
        if (!found.IsEmpty)
        {
            found[row] = Flags.OfUnusable(status[row]);
        }
    }
}
