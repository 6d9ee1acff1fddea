using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>The loop over the rows of a column, as many at once as the processor takes.</summary>
internal static class RowSums
{
    internal static void Fill<TSum>(scoped in TSum sum, Span<double> answers, Span<RowStatus> status, Span<ulong> flags)
        where TSum : struct, IRowSum, allows ref struct
    {
        int row = Vector512.IsHardwareAccelerated
            ? Several<TSum, EightLanes>(sum, answers, status, flags)
            : Several<TSum, FourLanes>(sum, answers, status, flags);
        for (; row < answers.Length; row++)
        {
            (answers[row], status[row], flags[row]) = sum.One(row);
        }
    }

    /// <summary>The numbers of a column from a row on; zero where a column that may be left out was.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T At<T>(ReadOnlySpan<double> numbers, int row)
        where T : unmanaged, ILanes<T> =>
        numbers.IsEmpty ? T.Of(0) : MemoryMarshal.Read<T>(MemoryMarshal.AsBytes(numbers[row..]));

    private static int Several<TSum, T>(
        scoped in TSum sum,
        Span<double> answers,
        Span<RowStatus> status,
        Span<ulong> flags
    )
        where TSum : struct, IRowSum, allows ref struct
        where T : unmanaged, ILanes<T>
    {
        uint all = (1u << T.Count) - 1;
        int row = 0;
        for (; row <= answers.Length - T.Count; row += T.Count)
        {
            var found = sum.Several<T>(row, out var holds, out var noted);
            MemoryMarshal.Write(MemoryMarshal.AsBytes(answers[row..]), found);
            MemoryMarshal.Write(MemoryMarshal.AsBytes(flags[row..]), noted);
            T.OfBits((ulong)RowStatus.Answered).CopyBytesTo(MemoryMarshal.AsBytes(status[row..]));
            for (uint left = ~T.LanesSet(holds) & all; left != 0; left &= left - 1)
            {
                int i = row + BitOperations.TrailingZeroCount(left);
                (answers[i], status[i], flags[i]) = sum.One(i);
            }
        }

        return row;
    }
}
