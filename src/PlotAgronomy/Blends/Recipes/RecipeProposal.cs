using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>The cheapest recipe that meets the request, and what each season more would cost.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class RecipeProposal : IWorkedResult
{
    internal RecipeProposal() { }

    /// <summary>Gets the request.</summary>
    public required RecipeRequest Request { get; init; }

    /// <summary>Gets the cheapest recipe that meets every goal; null when none does, and a finding says why.</summary>
    public required Recipe? Recipe { get; init; }

    /// <summary>Gets whether the search stopped at its limit before it found any recipe: then none is named, though one may
    /// exist.</summary>
    public required bool IsUndecided { get; init; }

    /// <summary>Gets the cheapest recipe for covering at least 0, 1, ... 5 seasons, budget aside.</summary>
    public required ImmutableArray<SeasonCountRecipe> CheapestBySeasons { get; init; }

    /// <summary>Gets the lots that were not considered, with the reason.</summary>
    public required ImmutableArray<ExcludedLot> Excluded { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(RecipeFindings.Of(Request, Found, Recipe, IsUndecided));

    /// <summary>The cheapest recipe, budget aside.</summary>
    internal Recipe? Found { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. (Recipe?.Blend.Sources ?? [])
                .Concat(Recipe?.Coverage.Sources ?? [])
                .Concat(BlendConstants.All.Find("recipe-step").Origin.Sources)
                .Distinct(),
        ];

    /// <summary>Finds the cheapest recipe.</summary>
    /// <param name="request">What the recipe must do.</param>
    /// <param name="lots">Lots on offer; of one kind the lot that is cheapest by living pound is used.</param>
    /// <returns>The proposal.</returns>
    /// <exception cref="ArgumentException">No lot, a least total above the greatest, or a smallest share above the
    /// largest.</exception>
    /// <remarks>Shares of a full stand are chosen in steps; among all choices of steps that meet the request the cheapest is
    /// found exactly, unless there are so many lots that the search stops at its limit, which <see cref="IsUndecided"/> and
    /// <see cref="Recipe.IsProvenCheapest"/> tell. Caps of groups bind when a kind must live on. Cost is by weight; whole
    /// packages cost more, and <see cref="Recipe.CostInPackages"/> stands beside it: another recipe may be cheaper in whole
    /// packages.</remarks>
    public static RecipeProposal Find(RecipeRequest request, IReadOnlyList<Offer<SeedLot>> lots)
    {
        var search = new RecipeSearch(request, lots);
        var found = search.Cheapest(out bool isUndecided);
        var recipe = request.Budget is { } budget && found?.Cost > budget ? null : found;
        return new RecipeProposal
        {
            Request = request,
            Found = found,
            Recipe = recipe,
            IsUndecided = isUndecided,
            CheapestBySeasons = search.BySeasons(),
            Excluded = search.Excluded,
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Recipe is null ? [] : Recipe.Blend.ShowWork().Concat(Recipe.Coverage.ShowWork()),
            .. CheapestBySeasons.Select(c =>
                BlendFormulas
                    .All["blend-cheapest-recipe"]
                    .Line(
                        c.IsUndecided ? "not known: the search stopped at its limit"
                            : c.Recipe is null ? "not to be had from these lots"
                            : $"{c.Recipe.Blend} = {Amounts.Print((double)c.Recipe.Cost, 2)}{InPackages(c.Recipe)}",
                        ("seasons", Amounts.Print(c.Seasons, 0))
                    )
            ),
        ];

    private static string InPackages(Recipe recipe) =>
        recipe.Packages.Lines.Any(l => l.Bags is not null)
            ? $", in whole packages {Amounts.Print((double)recipe.CostInPackages, 2)}"
            : "";

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
