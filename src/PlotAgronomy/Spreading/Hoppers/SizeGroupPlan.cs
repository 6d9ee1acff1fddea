using System.Collections.Immutable;

namespace PlotAgronomy.Spreading;

/// <summary>The fewest passes in which kinds of like size share the hopper, and the order of work.</summary>
public sealed class SizeGroupPlan : IWorkedResult
{
    internal SizeGroupPlan() { }

    /// <summary>Gets the rule.</summary>
    public required SizeRule Rule { get; init; }

    /// <summary>Gets the passes, in the order they are sown.</summary>
    public required ImmutableArray<SizeGroup> Groups { get; init; }

    /// <summary>Gets the order of work: large seed first, cover, then small, press.</summary>
    public required ImmutableArray<SeedingStep> Steps { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings { get; init; } = [];

    /// <inheritdoc/>
    public ImmutableArray<string> SourceIds =>
        [
            .. Groups
                .SelectMany(g => g.Kinds)
                .SelectMany(k => k.Evidence?.SourceIds ?? [])
                .Append("PRACTICE")
                .Distinct()
                .Order(StringComparer.Ordinal),
        ];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Groups.Select(
                (g, i) =>
                    new WorkedLine(
                        $"Pass {i + 1}",
                        SpreadingWords.SizeRatios[Rule],
                        $"{string.Join(", ", g.Kinds.Select(k => k.Name))}: {Amounts.Print(g.LargestToSmallest, 2)}",
                        "PRACTICE"
                    )
            ),
        ];
}
