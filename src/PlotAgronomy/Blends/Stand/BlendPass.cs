using System.Collections.Immutable;
using PlotAgronomy.Seeds;
using UnitsNet;

namespace PlotAgronomy.Blends;

/// <summary>Kinds of a blend that can be sown in one pass: the largest seed is at most twice as wide as the smallest (eight
/// times its weight), none is chaffy beside smooth ones, and all are covered or all are only pressed.</summary>
/// <remarks>The same grouping as that of the spreading room.</remarks>
public sealed class BlendPass
{
    private BlendPass(ImmutableArray<BlendPart> parts) => Parts = parts;

    /// <summary>Gets the kinds, heaviest seed first.</summary>
    public ImmutableArray<BlendPart> Parts { get; }

    /// <summary>Gets the shallowest depth that suits all of them; null when none does, or none is known.</summary>
    public Length? Shallowest => Common is { } depths ? Length.FromInches(depths.Top) : null;

    /// <summary>Gets the deepest depth that suits all of them; null when none does, or none is known.</summary>
    public Length? Deepest => Common is { } depths ? Length.FromInches(depths.Bottom) : null;

    internal double Largest => Parts.Max(p => SeedOf(p).Size);

    internal double Smallest => Parts.Min(p => SeedOf(p).Size);

    internal double DiameterRatio => BlendMath.DiameterRatio(Largest, Smallest);

    internal bool DepthsAreApart => KnownDepths.Length > 0 && Common is null;

    private PlantingDepth[] KnownDepths => [.. Parts.Select(p => p.Kind.Depth).OfType<PlantingDepth>()];

    private (double Top, double Bottom)? Common =>
        KnownDepths is { Length: > 0 } known && (known.Max(Top), known.Min(Bottom)) is var (top, bottom) && top <= bottom
            ? (top, bottom)
            : null;

    /// <summary>The kinds and their depth.</summary>
    /// <returns>Text such as <c>Winter wheat + Spring oats at 0.5-1.5 in</c>.</returns>
    public override string ToString()
    {
        string depth = Common is (var top, var bottom) ? $" at {Amounts.Print(top, 3)}-{Amounts.Print(bottom, 3)} in" : "";
        return string.Join(" + ", Parts.Select(p => p.Kind.ShortName)) + depth;
    }

    /// <summary>Groups the kinds sown one way: passes that are covered first, then the larger seed.</summary>
    internal static ImmutableArray<BlendPass> Of(Blend blend) =>
        [
            .. blend
                .Parts.OrderBy(p => p.Kind.Id, StringComparer.Ordinal)
                .GroupBy(p => p.Component.Method)
                .SelectMany(alike => SeedPasses.Group([.. alike], SeedOf, SeedPasses.MostDiameterRatio))
                .OrderByDescending(parts => parts.Any(p => p.Kind.Depth is { } depth && SeedPasses.IsCovered(Bottom(depth))))
                .ThenBy(parts => parts[0].Component.SeedsPerPound)
                .Select(parts => new BlendPass(parts)),
        ];

    private static PassSeed SeedOf(BlendPart part) =>
        new(
            SeedPasses.SizeOf(SeedMath.MilligramsPerPound / part.Component.SeedsPerPound),
            part.Kind.IsChaffy,
            part.Kind.Depth is { } depth ? Bottom(depth) : null
        );

    private static double Top(PlantingDepth depth)
    {
        Length shallowest = depth.Shallowest;
        return shallowest.Inches;
    }

    private static double Bottom(PlantingDepth depth)
    {
        Length deepest = depth.Deepest;
        return deepest.Inches;
    }
}
