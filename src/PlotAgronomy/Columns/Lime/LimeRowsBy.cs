using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>The rows of a lime column by one sum, as many at once as there are lanes.</summary>
/// <remarks>Each of its three passes is compiled by itself: in one they would be more than the compiler inlines.</remarks>
internal sealed class LimeRowsBy<TSum, T>(TSum sum, LimeRowChecks checks) : LimeRows
    where TSum : struct, ILimeSum
    where T : unmanaged, ILanes<T>
{
    /// <summary>Rows that are gone through several times while they are still near at hand; a multiple of any lanes.</summary>
    private const int RowsAtOnce = 512;

    internal override void Fill(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        int whole = waterPh.Length - (waterPh.Length % T.Count);
        for (int start = 0; start < whole; start += RowsAtOnce)
        {
            var rows = start..Math.Min(start + RowsAtOnce, whole);
            var phs = MemoryMarshal.Cast<double, T>(waterPh[rows]);
            var readings = MemoryMarshal.Cast<double, T>(reading[rows]);
            var answers = MemoryMarshal.Cast<double, T>(rates[rows]);
            var codes = MemoryMarshal.Cast<ulong, T>(flags[rows]);
            Stop(phs, readings, codes);
            Sum(phs, readings, codes, answers);
            Answer(codes, answers, MemoryMarshal.AsBytes(status[rows]));
        }

        if (whole < waterPh.Length)
        {
            Last(waterPh[whole..], reading[whole..], rates[whole..], status[whole..], flags[whole..]);
        }
    }

    /// <summary>Codes of rows before their sum.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Stop(ReadOnlySpan<T> waterPh, ReadOnlySpan<T> reading, Span<T> codes)
    {
        for (int i = 0; i < codes.Length; i++)
        {
            codes[i] = checks.Stops(waterPh[i], reading[i]);
        }
    }

    /// <summary>The sums, and what they notice.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Sum(ReadOnlySpan<T> waterPh, ReadOnlySpan<T> reading, Span<T> codes, Span<T> poundsPerAcre)
    {
        for (int i = 0; i < codes.Length; i++)
        {
            var going = RowCode.Is(codes[i], RowStatus.Answered);
            poundsPerAcre[i] = sum.PoundsPerAcre(reading[i], waterPh[i], going, out var remarks);
            codes[i] |= checks.FlagsOf(remarks) & going;
        }
    }

    /// <summary>Makes rates of sums, and flags and statuses of codes.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private void Answer(Span<T> codes, Span<T> rates, Span<byte> status)
    {
        for (int i = 0; i < codes.Length; i++)
        {
            (rates[i], var code) = checks.Answer(codes[i], rates[i]);
            codes[i] = RowCode.FlagsOf(code);
            RowCode.StatusOf(code).CopyBytesTo(status[(T.Count * i)..]);
        }
    }

    /// <summary>Fewer rows than lanes, filled up with rows of which nothing is known.</summary>
    private void Last(
        ReadOnlySpan<double> waterPh,
        ReadOnlySpan<double> reading,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> flags
    )
    {
        Span<double> phs = stackalloc double[T.Count];
        Span<double> readings = stackalloc double[T.Count];
        Span<double> found = stackalloc double[T.Count];
        Span<RowStatus> how = stackalloc RowStatus[T.Count];
        Span<ulong> why = stackalloc ulong[T.Count];
        phs.Fill(double.NaN);
        readings.Fill(double.NaN);
        waterPh.CopyTo(phs);
        reading.CopyTo(readings);
        Fill(phs, readings, found, how, why);
        found[..rates.Length].CopyTo(rates);
        how[..rates.Length].CopyTo(status);
        why[..rates.Length].CopyTo(flags);
    }
}
