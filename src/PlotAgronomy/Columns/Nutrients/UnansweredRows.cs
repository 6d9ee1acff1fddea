using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Columns;

/// <summary>Rows that the system answers none of, whatever they hold.</summary>
internal sealed class UnansweredRows(UnansweredNutrient unanswered, NeedRowFlags flags) : NeedRows(flags)
{
    private readonly RowStatus status = unanswered.LacksFact ? RowStatus.Missing : RowStatus.OutsideDomain;

    internal override bool ReadsCapacity => false;

    internal override void Rates(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> found
    )
    {
        rates.Fill(double.NaN);
        for (int i = 0; i < reading.Length; i++)
        {
            bool isUsable = NeedRowLimits.CanBeRead(reading[i]);
            status[i] = isUsable ? this.status : NeedRowLimits.StatusOfUnusable(reading[i], 0);
            if (!found.IsEmpty)
            {
                found[i] = isUsable ? Flags.Unanswered : Flags.OfUnusable(status[i]);
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
        high.Fill(double.NaN);
    }
}
