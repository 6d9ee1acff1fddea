using System.Collections.Immutable;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Kinds that go over the ground together in one pass: alike enough in size to share a hopper, none chaffy beside smooth
/// ones, and where every depth is known all covered or all only pressed.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SeedPass
{
    internal SeedPass(ImmutableArray<PassKind> kinds, double largest, double smallest)
    {
        Kinds = kinds;
        Largest = largest;
        Smallest = smallest;
    }

    /// <summary>Gets the kinds, largest first.</summary>
    public ImmutableArray<PassKind> Kinds { get; }

    /// <summary>Gets the ratio of the largest to the smallest kind under the rule; a pure number of at least 1.</summary>
    public double LargestToSmallest => SeedMath.SizeRatio(Largest, Smallest);

    /// <summary>Gets a value indicating whether the pass is of chaffy seed.</summary>
    public bool Chaffy => Kinds[0].Chaffy;

    /// <summary>Gets a value indicating whether the pass is sown before the ground is covered; else it is pressed in
    /// afterwards.</summary>
    public required bool SownBeforeCovering { get; init; }

    /// <summary>Gets the shallowest published depth that suits all of them; null when none does, or none is known.</summary>
    internal Length? Shallowest => Common is { } depths ? Length.FromInches(depths.Top) : null;

    /// <summary>Gets the deepest published depth that suits all of them; null when none does, or none is known.</summary>
    internal Length? Deepest => Common is { } depths ? Length.FromInches(depths.Bottom) : null;

    internal double Largest { get; }

    internal double Smallest { get; }

    internal bool DepthsAreApart => KnownDepths.Length > 0 && Common is null;

    private (double Top, double Bottom)[] KnownDepths =>
        [.. Kinds.Select(k => k.Kind?.Depth).OfType<PlantingDepth>().Select(d => (d.Shallowest.Inches, d.Deepest.Inches))];

    private (double Top, double Bottom)? Common =>
        KnownDepths is { Length: > 0 } known
        && (known.Max(d => d.Top), known.Min(d => d.Bottom)) is var (top, bottom)
        && top <= bottom
            ? (top, bottom)
            : null;

    /// <summary>Tells whether a kind goes in this pass.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>True when it does; a kind described by hand is in no kind's pass.</returns>
    public bool Holds(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Kinds.Any(k => k.Kind == kind);
    }

    /// <summary>The kinds and their depth.</summary>
    /// <returns>Text such as <c>Winter wheat + Spring oats at 0.5-1.5 in</c>.</returns>
    public override string ToString()
    {
        string depth = Common is (var top, var bottom) ? $" at {Amounts.Print(top, 3)}-{Amounts.Print(bottom, 3)} in" : "";
        return string.Join(" + ", Kinds.Select(k => k.Name)) + depth;
    }
}
