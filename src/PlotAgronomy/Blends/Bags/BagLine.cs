using PlotAgronomy.Seeds;

namespace PlotAgronomy.Blends;

/// <summary>What to buy of one lot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class BagLine
{
    internal BagLine() { }

    /// <summary>Gets what is bought.</summary>
    public required BlendComponent Component { get; init; }

    /// <summary>Gets the bulk weight the plan needs.</summary>
    public required BulkSeedMass Needed { get; init; }

    /// <summary>Gets how the lot is packed; null when it is not on offer.</summary>
    public Package? Package => Component.Offer?.Package;

    /// <summary>Gets the number of bags; null when the lot is sold by weight.</summary>
    public required int? Bags { get; init; }

    /// <summary>Gets the bulk weight bought.</summary>
    public required BulkSeedMass Bought { get; init; }

    /// <summary>Gets what it costs; null when no price is known.</summary>
    public required decimal? Cost { get; init; }

    /// <summary>Gets what is left when only the need is sown.</summary>
    public BulkSeedMass LeftOver => BulkSeedMass.FromPounds(Math.Max(0, Bought.Pounds - Needed.Pounds));

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Component.Kind.ShortName}: {Amounts.Print(Needed.ToMass(), "lb", 2)}";
}
