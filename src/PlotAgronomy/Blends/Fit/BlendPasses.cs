using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>The passes in which a blend is sown, grouped by the rules of the spreading room.</summary>
internal static class BlendPasses
{
    /// <summary>Groups the kinds sown one way: passes that are covered first, then the larger seed.</summary>
    internal static ImmutableArray<SeedPass> Of(Blend blend) =>
        [
            .. blend
                .Parts.OrderBy(p => p.Kind.Id, StringComparer.Ordinal)
                .GroupAlike((one, other) => one.Component.Method == other.Component.Method)
                .Select(alike => alike.Select(p => PassKind.FromKind(p.Kind, p.Component.SeedsPerPound)))
                .SelectMany(alike => SeedPasses.Group([.. alike], SizeOf, SeedPasses.MostDiameterRatio))
                .Select(kinds => new SeedPass([.. kinds], SizeOf(kinds[0]), SizeOf(kinds[^1]))
                {
                    SownBeforeCovering = kinds.Any(k => k.SowingDepth is { } depth && SeedPasses.IsCovered(depth.Inches)),
                })
                .OrderByDescending(pass => pass.SownBeforeCovering)
                .ThenByDescending(pass => pass.Largest),
        ];

    private static double SizeOf(PassKind kind) => SeedPasses.SizeOf(kind.MilligramsPerSeed);
}
