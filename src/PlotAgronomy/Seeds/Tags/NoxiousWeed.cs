namespace PlotAgronomy.Seeds;

/// <summary>A noxious weed named on a tag.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed partial class NoxiousWeed
{
    /// <summary>Gets the weed's name as printed.</summary>
    public required string Name
    {
        get;
        init => field = Guard.NotNull(value, nameof(Name));
    }

    /// <summary>Gets its seeds in a pound of the bag.</summary>
    public required double SeedsPerPound { get; init; }

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: {Amounts.Print(SeedsPerPound, 0)} per lb";
}
