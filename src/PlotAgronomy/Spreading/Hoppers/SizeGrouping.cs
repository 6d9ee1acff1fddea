using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>The fewest passes in which kinds of like size share the hopper, and the order of work.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SizeGrouping : IWorkedResult
{
    internal SizeGrouping() { }

    /// <summary>Gets the rule.</summary>
    public required SizeRule Rule { get; init; }

    /// <summary>Gets the passes, in the order they are sown.</summary>
    public required ImmutableArray<SeedPass> Groups { get; init; }

    /// <summary>Gets the order of work: large seed first, cover, then small, press.</summary>
    public required ImmutableArray<SeedingStep> Steps { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => Finding.InOrder(SizeCautions.Of(Groups));

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources =>
        [
            .. Groups
                .SelectMany(g => g.Kinds)
                .SelectMany(k => k.Evidence?.Sources ?? [])
                .Concat(SpreadingFormulas.All.SourcesOf(FormulaId))
                .Distinct()
                .OrderBy(s => s.Id, StringComparer.Ordinal),
        ];

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            .. Groups.Select(
                (g, i) =>
                    Rule == SizeRule.DiameterTwoToOne
                        ? Line(g, i, "largest diameter", "smallest diameter")
                        : Line(g, i, "largest density x diameter", "smallest")
            ),
        ];

    private string FormulaId => Rule == SizeRule.DiameterTwoToOne ? "spread-pass-diameters" : "spread-pass-flight";

    private WorkedLine Line(SeedPass group, int index, string largest, string smallest) =>
        SpreadingFormulas
            .All[FormulaId]
            .Line(
                Amounts.Print(group.LargestToSmallest, 2),
                ("pass", Amounts.Print(index + 1, 0)),
                ("kinds", string.Join(", ", group.Kinds.Select(k => k.Name))),
                (largest, Amounts.Print(group.Largest, 2)),
                (smallest, Amounts.Print(group.Smallest, 2))
            );
}
