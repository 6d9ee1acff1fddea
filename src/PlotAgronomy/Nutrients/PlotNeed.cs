using System.Collections.Immutable;

namespace PlotAgronomy.Nutrients;

/// <summary>What a plot should receive this season, nutrient by nutrient: what the fertilizer sum starts from.</summary>
public sealed class PlotNeed : IWorkedResult
{
    private readonly Func<ImmutableArray<WorkedLine>> work;

    internal PlotNeed(ImmutableArray<NutrientTarget> targets, IEnumerable<Finding> findings, IEnumerable<string> sourceIds, Func<ImmutableArray<WorkedLine>> work)
    {
        Targets = [.. targets.OrderBy(t => t.Nutrient)];
        Findings = Finding.InOrder(findings);
        SourceIds = [.. sourceIds.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
        this.work = work;
    }

    /// <summary>Gets the targets, at most one for a nutrient, in the order of <see cref="PlantNutrient"/>.</summary>
    public ImmutableArray<NutrientTarget> Targets { get; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; }

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds { get; }

    /// <summary>A need stated by the user, without a recommendation system behind it.</summary>
    /// <param name="targets">Targets; at least one, no nutrient twice.</param>
    /// <returns>The need.</returns>
    /// <exception cref="ArgumentException">No target, or two for one nutrient.</exception>
    public static PlotNeed Stated(params IReadOnlyList<NutrientTarget> targets)
    {
        Guard.NotEmpty(targets);
        if (targets.GroupBy(t => t.Nutrient).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw new ArgumentException($"Two targets for {twice.Key}.", nameof(targets));
        }

        return new PlotNeed([.. targets], [], [], () => [.. targets.Select(LineOf)]);
    }

    /// <summary>Finds the target of a nutrient.</summary>
    /// <param name="nutrient">Nutrient.</param>
    /// <returns>The target, or null when nothing was said about this nutrient.</returns>
    public NutrientTarget? Find(PlantNutrient nutrient)
    {
        Guard.Defined(nutrient);
        return Targets.FirstOrDefault(t => t.Nutrient == nutrient);
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() => work();

    private static WorkedLine LineOf(NutrientTarget target) =>
        new(target.Nutrient.ToString(), target.Reason, Amounts.Print(target.AtLeast, decimals: 1));
}
