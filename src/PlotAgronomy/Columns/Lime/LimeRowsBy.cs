using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a lime column by one kernel: checks for four rows at once, the sum row by row.</summary>
internal sealed class LimeRowsBy<TKernel>(TKernel kernel, LimeRowChecks checks) : LimeRows
    where TKernel : struct, ILimeKernel
{
    private const int AtOnce = 4;

    internal override void Fill(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        int fours = waterPh.Length - (waterPh.Length % AtOnce);
        for (int i = 0; i < fours; i += AtOnce)
        {
            Four(waterPh.Slice(i, AtOnce), reading.Slice(i, AtOnce), rates[i..], status[i..], flags[i..]);
        }

        if (fours < waterPh.Length)
        {
            Last(waterPh[fours..], reading[fours..], rates[fours..], status[fours..], flags[fours..]);
        }
    }

    /// <summary>Fewer than four rows, filled up with rows of which nothing is known.</summary>
    private void Last(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        Span<double> phs = [double.NaN, double.NaN, double.NaN, double.NaN];
        Span<double> readings = [double.NaN, double.NaN, double.NaN, double.NaN];
        Span<double> found = stackalloc double[AtOnce];
        Span<RowStatus> how = stackalloc RowStatus[AtOnce];
        Span<ulong> why = stackalloc ulong[AtOnce];
        waterPh.CopyTo(phs);
        reading.CopyTo(readings);
        Four(phs, readings, found, how, why);
        found[..rates.Length].CopyTo(rates);
        how[..rates.Length].CopyTo(status);
        why[..rates.Length].CopyTo(flags);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private void Four(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        var phs = Vector256.Create(waterPh);
        var readings = Vector256.Create(reading);
        var code = checks.Stops(phs, readings);
        var pounds = TKernel.IsPlain
            ? Vector256.Create(
                kernel.PoundsPerAcre(reading[0], waterPh[0], out _),
                kernel.PoundsPerAcre(reading[1], waterPh[1], out _),
                kernel.PoundsPerAcre(reading[2], waterPh[2], out _),
                kernel.PoundsPerAcre(reading[3], waterPh[3], out _)
            )
            : OfThoseNotStopped(waterPh, reading, ref code);
        (var answers, code) = checks.Answer(code, pounds);
        answers.CopyTo(rates);
        RowCode.FlagsOf(code).CopyTo(flags);
        var statuses = RowCode.StatusOf(code);
        for (int row = 0; row < AtOnce; row++)
        {
            status[row] = (RowStatus)statuses.GetElement(row);
        }
    }

    private Vector256<double> OfThoseNotStopped(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        ref Vector256<ulong> code
    )
    {
        var going = RowCode.Is(code, RowStatus.Answered);
        Span<double> pounds = stackalloc double[AtOnce];
        Span<ulong> remarked = stackalloc ulong[AtOnce];
        for (int row = 0; row < AtOnce; row++)
        {
            if (going.GetElement(row) != 0)
            {
                pounds[row] = kernel.PoundsPerAcre(reading[row], waterPh[row], out var remarks);
                remarked[row] = checks.FlagsOf(remarks);
            }
        }

        code |= Vector256.Create<ulong>(remarked);
        return Vector256.Create<double>(pounds);
    }
}
