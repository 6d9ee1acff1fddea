using System.Collections.Immutable;
using PlotAgronomy.Reference;
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

    /// <summary>Gets the order of work: large seed first, cover, then small, press; no pressing where no
    /// seed is small.</summary>
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

    /// <summary>Arranges kinds in passes.</summary>
    /// <param name="kinds">Kinds to sow; at least one.</param>
    /// <param name="rule">Which kinds may share a pass.</param>
    /// <returns>The passes and the order of work.</returns>
    /// <exception cref="ArgumentException">No kind, or a kind without a density under the density rule.</exception>
    public static SizeGrouping Arrange(IReadOnlyList<PassKind> kinds, SizeRule rule = SizeRule.DiameterTwoToOne)
    {
        Guard.NotEmpty(kinds);
        Guard.Defined(rule);
        var size = SeedSizes.Measure(kinds, rule);
        double limit =
            rule == SizeRule.DiameterTwoToOne
                ? SeedPasses.MostDiameterRatio
                : SpreadingConstants.All["pass-density-diameter-ratio"];
        var groups = SeedPasses.Group(kinds, size, limit).OrderByDescending(kindsOfPass => size(kindsOfPass[0])).ToList();
        bool anyDepth = kinds.Any(k => k.SowingDepth is not null);
        var ordered = groups
            .Select(
                (g, i) =>
                    new SeedPass([.. g], size(g[0]), size(g[^1]))
                    {
                        SownBeforeCovering = anyDepth ? IsDeep(g) : i < groups.Count - 1,
                    }
            )
            .OrderByDescending(g => g.SownBeforeCovering)
            .ToImmutableArray();

        return new SizeGrouping
        {
            Rule = rule,
            Groups = ordered,
            Steps = [.. OrderOfWork(ordered)],
        };
    }

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

    private static bool IsDeep(PassKind[] kinds) =>
        kinds.All(k => k.SowingDepth is not { } depth || SeedPasses.IsCovered(depth.Inches))
        && kinds.Any(k => k.SowingDepth is not null);

    private static IEnumerable<SeedingStep> OrderOfWork(ImmutableArray<SeedPass> groups)
    {
        for (int i = 0; i < groups.Length; i++)
        {
            yield return new SeedingStep(SeedingAction.Spread, groups[i]);
            if (groups[i].SownBeforeCovering && (i == groups.Length - 1 || !groups[i + 1].SownBeforeCovering))
            {
                yield return new SeedingStep(SeedingAction.Cover);
            }
        }

        if (groups.Any(g => !g.SownBeforeCovering))
        {
            yield return new SeedingStep(SeedingAction.Press);
        }
    }

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
