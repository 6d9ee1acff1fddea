using System.Runtime.Intrinsics;

namespace PlotAgronomy.Columns;

/// <summary>Status and flags of a row in one number, so that four rows are put together without a branch. The status lies in the
/// three highest bits; a mark is a bit between them and the flags that only the loop uses.</summary>
internal static class RowCode
{
    internal const ulong FirstMark = 1UL << 60;
    internal const ulong SecondMark = 1UL << 59;
    private const int StatusBits = 61;
    private const ulong Flags = SecondMark - 1;

    internal static ulong Of(RowStatus status, ulong flags) => ((ulong)status << StatusBits) | flags;

    internal static Vector256<ulong> When(Vector256<double> mask, ulong code, Vector256<ulong> otherwise) =>
        Vector256.ConditionalSelect(mask.AsUInt64(), Vector256.Create(code), otherwise);

    /// <summary>Adds a flag to rows that have a mark.</summary>
    internal static Vector256<ulong> Add(Vector256<ulong> code, ulong mark, Vector256<double> mask, ulong flag)
    {
        var marked = Vector256.Equals(code & Vector256.Create(mark), Vector256.Create(mark));
        return code | (marked & mask.AsUInt64() & Vector256.Create(flag));
    }

    internal static Vector256<ulong> StatusOf(Vector256<ulong> code) => code >>> StatusBits;

    internal static Vector256<ulong> FlagsOf(Vector256<ulong> code) => code & Vector256.Create(Flags);

    /// <summary>All bits where a row has a status.</summary>
    internal static Vector256<ulong> Is(Vector256<ulong> code, RowStatus status) =>
        Vector256.Equals(StatusOf(code), Vector256.Create((ulong)status));
}
