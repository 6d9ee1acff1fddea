using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Cuts until the rest costs no more than a budget: of what harms least that which saves most, and takes back in the end
/// what turns out to be no longer needed.</summary>
/// <param name="costOf">What a state of the shopping costs.</param>
/// <param name="plotsOf">The plots that are in it.</param>
/// <param name="without">The state after a cut.</param>
internal sealed class BudgetCutter<T>(
    Func<T, decimal> costOf,
    Func<T, ImmutableArray<PlotAnswers>> plotsOf,
    Func<T, BudgetCut, T> without
)
{
    internal (T Kept, ImmutableArray<BudgetCut> Cut) Within(T whole, decimal budget)
    {
        var cuts = new List<BudgetCut>();
        var kept = whole;
        while (costOf(kept) > budget && Next(kept) is { } next)
        {
            cuts.Add(next);
            kept = without(kept, next);
        }

        foreach (var cut in cuts.OrderByDescending(c => c.Sort).ToList())
        {
            if (costOf(cuts.Where(c => c != cut).Aggregate(whole, without)) <= budget)
            {
                cuts.Remove(cut);
            }
        }

        return Told(whole, cuts);
    }

    /// <summary>The mildest sort of which any cut saves money; of plots that which costs most for what it feeds, of other cuts
    /// that which saves most.</summary>
    private BudgetCut? Next(T kept) =>
        Enum.GetValues<CutSort>()
            .Where(sort => sort != CutSort.WholePlot || plotsOf(kept).Length > 1)
            .Select(sort =>
                plotsOf(kept)
                    .SelectMany(p => CutChoices.Of(p, sort))
                    .Select(c => (Cut: c, Saves: costOf(kept) - costOf(without(kept, c))))
                    .Where(c => c.Saves > 0)
                    .OrderByDescending(c =>
                        sort == CutSort.WholePlot ? PlotFeeding.CostOfFeeding(c.Cut.Plot, c.Saves) : (double)c.Saves
                    )
                    .Select(c => c.Cut)
                    .FirstOrDefault()
            )
            .FirstOrDefault(c => c is not null);

    /// <summary>Each cut with what it saves beside the graver ones: bags that several share are saved with the last of
    /// them.</summary>
    private (T Kept, ImmutableArray<BudgetCut> Cut) Told(T whole, IEnumerable<BudgetCut> cuts)
    {
        var kept = whole;
        var told = new List<BudgetCut>();
        foreach (var cut in cuts.OrderByDescending(c => c.Sort))
        {
            var after = without(kept, cut);
            told.Add(cut.Saving(costOf(kept) - costOf(after)));
            kept = after;
        }

        return (kept, [.. told.OrderBy(c => c.Sort)]);
    }
}
