using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a lime column by one sum, four rows at once.</summary>
internal sealed class LimeRowsBy<TSum>(TSum sum, LimeRowChecks checks) : LimeRows
    where TSum : struct, ILimeSumOfFour
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
        var going = RowCode.Is(code, RowStatus.Answered);
        var pounds = sum.PoundsPerAcre(readings, phs, going, out var remarks);
        code |= checks.FlagsOf(remarks) & going;
        (var answers, code) = checks.Answer(code, pounds);
        answers.CopyTo(rates);
        RowCode.FlagsOf(code).CopyTo(flags);
        RowStatuses.Write(RowCode.StatusOf(code), status);
    }
}
