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
    /// <param name="kinds">Kinds.</param>
    /// <param name="sizeOf">Any measure of a seed's size that is proportional to a diameter; above 0.</param>
    /// <param name="mostRatio">Largest ratio of two sizes in one pass.</param>
    internal static IEnumerable<PassKind[]> Group(
        IReadOnlyCollection<PassKind> kinds,
        Func<PassKind, double> sizeOf,
        double mostRatio
    )
    {
        bool depthsKnown = kinds.All(k => k.SowingDepth is not null);
        return kinds
            .GroupBy(k => new { k.Chaffy, IsCovered = depthsKnown && IsCovered(k.SowingDepth!.Value.Inches) })
            .SelectMany(alike => Split([.. alike.OrderByDescending(sizeOf)], sizeOf, mostRatio));
    }

    private static IEnumerable<PassKind[]> Split(
        List<PassKind> largestFirst,
        Func<PassKind, double> sizeOf,
        double mostRatio
    )
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
