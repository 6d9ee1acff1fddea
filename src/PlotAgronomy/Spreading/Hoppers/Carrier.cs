using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>A material that stretches a small seed so that the spreader feeds steadily.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class Carrier
{
    private static readonly Catalog<Carrier> Catalog = new(
        "carrier",
        () => Table.Read("Spreading/Data/carriers.csv", row => new Carrier(row)),
        c => c.Id,
        c => c.Origin.Status
    );

    private enum PartsBasis
    {
        Weight,
        Volume,
    }

    private Carrier(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        IsFit = row.YesOrNo("is_fit");
        IsFeed = row.YesOrNo("is_feed");
        PartsLow = row.NumberOrNull("parts_low");
        PartsHigh = row.NumberOrNull("parts_high");
        PartsByWeight = row.ChoiceOrNull<PartsBasis>("parts_basis") == PartsBasis.Weight;
        Remark = row.Text("remark");
        Origin = row.Origin();
    }

    /// <summary>Gets the id, such as <c>dry-sand</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets a value indicating whether it may be mixed with seed.</summary>
    public bool IsFit { get; }

    /// <summary>Gets a value indicating whether birds and game eat it.</summary>
    public bool IsFeed { get; }

    /// <summary>Gets the smallest customary parts of carrier to one of seed, a pure number; null when none is given.</summary>
    public double? PartsLow { get; }

    /// <summary>Gets the largest customary parts of carrier to one of seed, a pure number; null when none is given.</summary>
    public double? PartsHigh { get; }

    /// <summary>Gets a value indicating whether the customary parts are by weight; else by volume.</summary>
    public bool PartsByWeight { get; }

    /// <summary>Gets the remark of the trade.</summary>
    public string Remark { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets the carriers named in print or in the trade, fit or not.</summary>
    public static ImmutableArray<Carrier> All => Catalog.All;

    /// <summary>Gets the carriers that rest on memory.</summary>
    internal static ImmutableArray<Carrier> Unchecked => Catalog.Unchecked;

    /// <summary>Gets clean dry sand.</summary>
    public static Carrier DrySand => Find("dry-sand");

    /// <summary>Gets pelletized lime.</summary>
    public static Carrier PelletizedLime => Find("pelletized-lime");

    /// <summary>Gets rice hulls.</summary>
    public static Carrier RiceHulls => Find("rice-hulls");

    /// <summary>Finds a carrier.</summary>
    /// <param name="id">Id, such as <c>dry-sand</c>.</param>
    /// <returns>The carrier.</returns>
    /// <exception cref="KeyNotFoundException">No carrier has this id; the message lists all.</exception>
    public static Carrier Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a carrier.</summary>
    /// <param name="id">Id.</param>
    /// <param name="entry">The carrier, when there is one.</param>
    /// <param name="problem">What is wrong when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out Carrier? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Name;
}
