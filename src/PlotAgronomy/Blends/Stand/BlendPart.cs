using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>One kind of a blend, stated every way at once.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BlendPart
{
    internal BlendPart() { }

    /// <summary>Gets what the kind is and what its tag says.</summary>
    public required BlendComponent Component { get; init; }

    /// <summary>Gets the pure live seed sown per area.</summary>
    public required PureLiveSeedRate LiveRate { get; init; }

    /// <summary>Gets what goes through the spreader per area.</summary>
    public required BulkSeedRate BulkRate { get; init; }

    /// <summary>Gets the share of a full stand against the chosen full rate, with its published range.</summary>
    public required StandTotal ShareOfFullStand { get; init; }

    /// <summary>Gets the live seeds sown per ft2, a pure count.</summary>
    public required double LiveSeedsPerSquareFoot { get; init; }

    /// <summary>Gets the part of the bag's weight.</summary>
    public required Fraction ShareOfBulkWeight { get; init; }

    /// <summary>Gets the part of the weight of pure live seed.</summary>
    public required Fraction ShareOfLiveWeight { get; init; }

    /// <summary>Gets the part of the number of live seeds.</summary>
    public required Fraction ShareOfLiveSeeds { get; init; }

    /// <summary>Gets the part of the sum of shares of a full stand.</summary>
    public required Fraction ShareOfStand { get; init; }

    /// <summary>Gets the pure seed of the kind as a tag of the whole blend would print it: a part of the weight of the whole
    /// bag.</summary>
    public required Fraction PureSeedOnTag { get; init; }

    /// <summary>Gets the kind.</summary>
    public CropKind Kind => Component.Kind;

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Component.Kind.ShortName}: {LiveRate}";
}
