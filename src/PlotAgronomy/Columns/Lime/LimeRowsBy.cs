using PlotAgronomy.Liming;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a lime column by one kernel.</summary>
internal sealed class LimeRowsBy<TKernel>(TKernel kernel, LimeRowChecks checks) : LimeRows
    where TKernel : struct, ILimeKernel
{
    internal override void Fill(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        for (int i = 0; i < waterPh.Length; i++)
        {
            (rates[i], status[i], flags[i]) = Answer(waterPh[i], reading[i]);
        }
    }

    private (double Rate, RowStatus Status, ulong Flags) Answer(double waterPh, double reading)
    {
        if (checks.ImplausibleFlag(waterPh, reading) is var implausible && implausible != 0)
        {
            return (double.NaN, RowStatus.Implausible, implausible);
        }

        var stop = checks.StopOf(waterPh, reading, kernel.Holds(reading, waterPh));
        if (stop != LimeStop.None)
        {
            return checks.Stopped(stop, waterPh, reading);
        }

        double pounds = kernel.PoundsPerAcre(reading, waterPh, out var remarks);
        return checks.Answered(pounds, remarks, waterPh, reading);
    }
}
