using System.Collections.Immutable;

namespace PlotAgronomy.Seeds;

/// <summary>Sorts seeds into the fewest passes whose seeds may share a hopper.</summary>
/// <remarks>Chaffy seed goes apart from smooth seed. Where every depth is known, seed that is covered goes apart from seed that
/// is only pressed: the work between them differs. Within these, sorted by size, taking each pass as wide as the ratio allows
/// from the largest down gives the fewest passes.</remarks>
internal static class SeedPasses
{
    /// <summary>Gets the largest ratio of two diameters in one pass.</summary>
    internal static double MostDiameterRatio => SeedConstants.All["pass-diameter-ratio"];

    /// <summary>Gets the deepest sowing depth of seed that is pressed rather than covered.</summary>
    internal static double DeepestPressedInches => SeedConstants.All["cover-depth"];

    /// <summary>A size for seeds of which only the weight is known: proportional to the diameter of seeds alike in shape and
    /// density.</summary>
    internal static double SizeOf(double milligrams) => Math.Cbrt(milligrams);

    internal static bool IsCovered(double deepestInches) => deepestInches > DeepestPressedInches;

    /// <summary>The passes in no order, each with its largest seed first.</summary>
    internal static IEnumerable<ImmutableArray<T>> Group<T>(
        IReadOnlyCollection<T> kinds,
        Func<T, PassSeed> seedOf,
        double mostRatio
    )
    {
        bool depthsKnown = kinds.All(k => seedOf(k).DeepestInches is not null);
        return kinds
            .GroupBy(k => (seedOf(k).IsChaffy, depthsKnown && IsCovered(seedOf(k).DeepestInches!.Value)))
            .SelectMany(alike => Split([.. alike.OrderByDescending(k => seedOf(k).Size)], k => seedOf(k).Size, mostRatio));
    }

    private static IEnumerable<ImmutableArray<T>> Split<T>(List<T> largestFirst, Func<T, double> sizeOf, double mostRatio)
    {
        int start = 0;
        for (int i = 1; i <= largestFirst.Count; i++)
        {
            if (i == largestFirst.Count || Tolerance.IsAbove(sizeOf(largestFirst[start]) / sizeOf(largestFirst[i]), mostRatio))
            {
                yield return [.. largestFirst[start..i]];
                start = i;
            }
        }
    }
}
