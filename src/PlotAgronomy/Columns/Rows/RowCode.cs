using PlotAgronomy.Reference;

namespace PlotAgronomy.Columns;

/// <summary>Status and flags of a row in one number, so that rows are put together without a branch. The status lies in the
/// three highest bits; a mark is a bit between them and the flags that only the loop uses.</summary>
internal static class RowCode
{
    internal const ulong FirstMark = 1UL << 60;
    internal const ulong SecondMark = 1UL << 59;
    private const int StatusBits = 61;
    private const ulong Flags = SecondMark - 1;

    internal static ulong Of(RowStatus status, ulong flags) => ((ulong)status << StatusBits) | flags;

    /// <summary>Adds a flag to rows that have a mark.</summary>
    internal static T Add<T>(T code, ulong mark, T mask, ulong flag)
        where T : unmanaged, ILanes<T> => code | (T.HasBits(code & T.OfBits(mark), T.OfBits(mark)) & mask & T.OfBits(flag));

    internal static T StatusOf<T>(T code)
        where T : unmanaged, ILanes<T> => code >>> StatusBits;

    internal static T FlagsOf<T>(T code)
        where T : unmanaged, ILanes<T> => code & T.OfBits(Flags);

    /// <summary>A mask of the rows that have a status.</summary>
    internal static T Is<T>(T code, RowStatus status)
        where T : unmanaged, ILanes<T> => T.HasBits(StatusOf(code), T.OfBits((ulong)status));
}
