using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>Sorts kinds into the fewest passes whose seeds are alike enough to share a hopper.</summary>
/// <remarks>In a shaken hopper small dense seed works down through large seed and leaves first. Under the default rule the
/// largest diameter of a pass is at most twice the smallest; where a kind has no diameter, all kinds are compared by the cube
/// root of their seed weights. Chaffy kinds go apart from smooth ones (common practice). Kinds that sow deep go first and are
/// covered; shallow ones follow in a pass of their own and are pressed. Where a depth is not known, depths part no kinds, and a
/// finding says which pass mixes them; where none is known, every pass but the last is sown before covering. The grouping is that
/// of
/// <c>BlendFit</c>: sorted by size, taking each pass as wide as the rule allows from the largest down gives the fewest
/// passes.</remarks>
public static class SizeGroups
{
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
                    new SeedPass(g, size(g[0]), size(g[^1])) { SownBeforeCovering = anyDepth ? IsDeep(g) : i < groups.Count - 1 }
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

    /// <summary>Ratio of two kinds' sizes.</summary>
    /// <param name="first">One kind.</param>
    /// <param name="second">Another kind.</param>
    /// <returns>Larger over smaller diameter where both are measured, else the cube root of the ratio of their seed
    /// weights.</returns>
    public static double SizeRatio(PassKind first, PassKind second)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(second);
        var size = SeedSizes.Measure([first, second], SizeRule.DiameterTwoToOne);
        double ratio = size(first) / size(second);
        return Math.Max(ratio, 1 / ratio);
    }

    private static bool IsDeep(ImmutableArray<PassKind> kinds) =>
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

        yield return new SeedingStep(SeedingAction.Press);
    }
}
