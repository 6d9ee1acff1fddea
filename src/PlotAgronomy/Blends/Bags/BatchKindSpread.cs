using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>One kind's seeds in a small batch, and how far chance may move them.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BatchKindSpread
{
    internal BatchKindSpread() { }

    /// <summary>Gets the kind.</summary>
    public required CropKind Kind { get; init; }

    /// <summary>Gets the live seeds expected in the batch, a pure count.</summary>
    public required double LiveSeeds { get; init; }

    /// <summary>Gets the coefficient of variation by random mixing: 1 / sqrt(seeds), a pure number.</summary>
    internal double Variation => BlendMath.RandomVariation(LiveSeeds);

    /// <summary>Gets how far 95 of 100 batches stay from the expected count at most, on either side, as a part of it; it may
    /// exceed 1.</summary>
    public double NinetyFivePercentRange => BlendMath.RangeOfCount(SeedMath.NormalNinetyFive, LiveSeeds);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Kind.ShortName}: {Amounts.Print(LiveSeeds, 0)} live seeds";
}
