using System.Runtime.CompilerServices;
using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a column of needs by one kernel.</summary>
internal sealed class NeedRowsBy<TKernel>(TKernel kernel, ReadingSteps steps, double capacityOfAll, NeedRowFlags flags)
    : NeedRows(flags)
    where TKernel : struct, INeedKernel
{
    /// <summary>Rows whose flags are found while their rates are still near at hand.</summary>
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
        for (int start = 0; start < reading.Length; start += RowsAtOnce)
        {
            var rows = start..Math.Min(start + RowsAtOnce, reading.Length);
            var capacities = ReadsCapacity ? capacity[rows] : capacity;
            Rates(reading[rows], capacities, rates[rows], status[rows]);
            if (!found.IsEmpty)
            {
                Remarks(reading[rows], capacities, rates[rows], status[rows], found[rows]);
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

    private void Rates(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> rates,
        Span<RowStatus> status
    )
    {
        var sum = kernel;
        for (int i = 0; i < reading.Length; i++)
        {
            double ofRow = CapacityOf(capacity, i);
            if (IsUsable(reading[i], ofRow))
            {
                double rate = sum.Rate(TestOf(reading[i]), ofRow);
                rates[i] = rate;
                status[i] = StatusOf(rate);
            }
            else
            {
                rates[i] = double.NaN;
                status[i] = NeedRowLimits.StatusOfUnusable(reading[i], ofRow);
            }
        }
    }

    private void Remarks(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        ReadOnlySpan<double> rates,
        ReadOnlySpan<RowStatus> status,
        Span<ulong> found
    )
    {
        var sum = kernel;
        for (int i = 0; i < reading.Length; i++)
        {
            found[i] =
                status[i] <= RowStatus.OutsideDomain
                    ? Flags.Of(sum.Remarks(TestOf(reading[i]), CapacityOf(capacity, i), rates[i]))
                    : Flags.OfUnusable(status[i]);
        }
    }

    /// <summary>Answered is 0, none needed 1, outside the domain 2: added up without a jump.</summary>
    private static RowStatus StatusOf(double rate) =>
        (RowStatus)(
            (Unsafe.BitCast<bool, byte>(rate == 0) * (byte)RowStatus.NoneNeeded)
            + (Unsafe.BitCast<bool, byte>(double.IsNaN(rate)) * (byte)RowStatus.OutsideDomain)
        );

    private double CapacityOf(ReadOnlySpan<double> capacity, int row) =>
        !kernel.ReadsCapacity ? 0
        : capacity.IsEmpty ? capacityOfAll
        : capacity[row];

    private bool IsUsable(double reading, double capacity) =>
        NeedRowLimits.CanBeRead(reading) && (!kernel.ReadsCapacity || NeedRowLimits.CanBeCapacity(capacity));

    private double TestOf(double reading) => steps.IsAsPrinted ? reading : steps.From(reading);
}
