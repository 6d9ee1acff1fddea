namespace PlotAgronomy.Blends;

/// <summary>What a proposal may cost, in partial recipes looked at. Counted and not timed, so that a search stops at the same
/// place on every machine.</summary>
internal sealed class RecipeWork(int most = RecipeWork.Most, int mostAfterwards = RecipeWork.MostAfterwards)
{
    /// <summary>Some tenths of a second, and 50 MB.</summary>
    internal const int Most = 200_000;

    /// <summary>For going on among a few lots where the search has stopped.</summary>
    internal const int MostAfterwards = 60_000;

    private readonly int mostAfterwards = mostAfterwards;
    private int looked;

    /// <summary>What is left for going on; itself without anything left after it.</summary>
    internal RecipeWork Afterwards => field ??= new(mostAfterwards, 0);

    internal bool IsSpent => looked >= most;

    internal void Add() => looked++;
}
