namespace PlotAgronomy.Columns;

/// <summary>The loop over the rows of a column of needs.</summary>
internal abstract class NeedRows(NeedRowFlags flags)
{
    /// <summary>Whether each row has an exchange capacity of its own.</summary>
    internal abstract bool ReadsCapacity { get; }

    internal NeedRowFlags Flags => flags;

    /// <summary>The rates of rows of spans that were checked.</summary>
    internal abstract void Rates(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> rates,
        Span<RowStatus> status,
        Span<ulong> found
    );

    /// <summary>The ranges of rows of spans that were checked.</summary>
    internal abstract void Ranges(
        ReadOnlySpan<double> reading,
        ReadOnlySpan<double> capacity,
        Span<double> low,
        Span<double> high,
        Span<RowStatus> status,
        Span<ulong> found
    );
}
