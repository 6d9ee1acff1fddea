namespace PlotAgronomy.Fertilizers;

/// <summary>What one question may cost, in numbers moved by the linear programs. Counted and not timed, so that a search stops at
/// the same place on every machine.</summary>
internal sealed class SearchWork(long most = SearchWork.Most)
{
    /// <summary>Some tenths of a second: tens of thousands of linear programs of a dozen products, or some hundred of thousands
    /// of products.</summary>
    internal const long Most = 60_000_000;

    /// <summary>Numbers that the nodes of one search hold at once, about 100 MB.</summary>
    internal const long MostHeld = 12_000_000;

    private long moved;

    internal bool IsSpent => moved >= most;

    internal void Add(long numbers) => moved += numbers;
}
