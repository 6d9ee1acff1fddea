using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Spreading;

/// <summary>What is to be noticed in kinds that were arranged in passes.</summary>
internal static class SizeCautions
{
    internal static IEnumerable<Finding> Of(ImmutableArray<SeedPass> groups)
    {
        bool measured = SeedSizes.AreMeasured(groups.SelectMany(g => g.Kinds));
        if (groups.Length > 1)
        {
            yield return FindingCatalog.Create(SpreadingCodes.SeparatePasses, ("passes", Amounts.Print(groups.Length, 0)));
        }

        if (!measured && groups.Sum(g => g.Kinds.Length) > 1)
        {
            yield return FindingCatalog.Create(SpreadingCodes.SizeFromWeight);
        }

        foreach (var kind in groups.SelectMany(g => g.Kinds))
        {
            if (!measured && kind.Evidence?.FindingFor($"the seed count of {kind.Name}") is { } fromMemory)
            {
                yield return fromMemory;
            }
        }

        foreach (var group in groups)
        {
            if (group.Chaffy)
            {
                yield return FindingCatalog.Create(
                    SpreadingCodes.ChaffyApart,
                    ("kinds", string.Join(", ", group.Kinds.Select(k => k.Name)))
                );
            }

            if (
                group.Kinds.Any(k => k.SowingDepth is { } depth && !SeedPasses.IsCovered(depth.Inches))
                && group.Kinds.Any(k => k.SowingDepth is { } depth && SeedPasses.IsCovered(depth.Inches))
            )
            {
                yield return FindingCatalog.Create(
                    SpreadingCodes.PassMixedDepth,
                    ("kinds", string.Join(", ", group.Kinds.Select(k => k.Name)))
                );
            }

            if (
                SeedSizes.ThrowRatio(group.Kinds) is { } ratio
                && Tolerance.IsAbove(ratio, SpreadingConstants.All["pass-density-diameter-ratio"])
            )
            {
                yield return FindingCatalog.Create(
                    SpreadingCodes.ThrowUnlike,
                    ("kinds", string.Join(", ", group.Kinds.Select(k => k.Name))),
                    ("ratio", Amounts.Print(ratio, 2))
                );
            }
        }
    }
}
