using System.Buffers.Binary;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace PlotAgronomy.Columns;

/// <summary>What a column of rates says of its rows: a number is an answer, 0 none needed, NaN outside the domain.</summary>
internal static class RowStatuses
{
    /// <summary>A byte of 1 for each bit.</summary>
    private static readonly ulong[] BytesOfBits = [.. Enumerable.Range(0, 256).Select(Spread)];

    /// <summary>Eight rows at once, without a jump: in a column of soils nobody can guess which needs none.</summary>
    internal static void OfRates(ReadOnlySpan<double> rates, Span<RowStatus> status)
    {
        var bytes = MemoryMarshal.AsBytes(status);
        int row = 0;
        for (; row <= rates.Length - Vector512<double>.Count; row += Vector512<double>.Count)
        {
            var eight = Vector512.Create(rates[row..]);
            ulong none = Vector512.Equals(eight, Vector512<double>.Zero).ExtractMostSignificantBits();
            ulong number = Vector512.Equals(eight, eight).ExtractMostSignificantBits();
            BinaryPrimitives.WriteUInt64LittleEndian(
                bytes[row..],
                (BytesOfBits[(int)none] * (byte)RowStatus.NoneNeeded)
                    + (BytesOfBits[(int)number ^ 0xFF] * (byte)RowStatus.OutsideDomain)
            );
        }

        for (; row < rates.Length; row++)
        {
            status[row] =
                double.IsNaN(rates[row]) ? RowStatus.OutsideDomain
                : rates[row] == 0 ? RowStatus.NoneNeeded
                : RowStatus.Answered;
        }
    }

    private static ulong Spread(int bits)
    {
        ulong bytes = 0;
        for (int bit = 0; bit < 8; bit++)
        {
            bytes |= (ulong)((bits >> bit) & 1) << (8 * bit);
        }

        return bytes;
    }
}
