using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What is worth saying of a proposed recipe, or of the want of one.</summary>
internal static class RecipeFindings
{
    /// <param name="request">What was asked.</param>
    /// <param name="found">Cheapest recipe, budget aside.</param>
    /// <param name="recipe">The same when the budget allows it.</param>
    /// <param name="isUndecided">The search stopped before it found any.</param>
    internal static IEnumerable<Finding> Of(RecipeRequest request, Recipe? found, Recipe? recipe, bool isUndecided)
    {
        if (found is { IsProvenCheapest: false })
        {
            yield return FindingCatalog.Create(BlendCodes.RecipeSearchStopped);
        }

        if (isUndecided)
        {
            yield return FindingCatalog.Create(BlendCodes.RecipeUndecided);
        }
        else if (found is null)
        {
            yield return FindingCatalog.Create(
                BlendCodes.NoRecipe,
                ("seasons", string.Join(", ", request.Seasons.Select(s => SeasonalUse.SeasonWords[s])))
            );
        }
        else if (recipe is null)
        {
            yield return FindingCatalog.Create(
                BlendCodes.OverBudget,
                ("cost", Amounts.Print((double)found.Cost, 2)),
                ("budget", Amounts.Print((double)request.Budget!.Value, 2))
            );
        }
        else
        {
            if (request.Budget is { } budget && recipe.CostInPackages > budget)
            {
                yield return FindingCatalog.Create(
                    BlendCodes.PackagesOverBudget,
                    ("cost", Amounts.Print((double)recipe.Cost, 2)),
                    ("packages", Amounts.Print((double)recipe.CostInPackages, 2)),
                    ("budget", Amounts.Print((double)budget, 2))
                );
            }

            foreach (
                var finding in recipe
                    .Blend.Findings.Concat(CrowdingReport.For(recipe.Blend, request.Standing).Findings)
                    .Concat(recipe.Coverage.Findings)
            )
            {
                yield return finding;
            }
        }
    }
}
