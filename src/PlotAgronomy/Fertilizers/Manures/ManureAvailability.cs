using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>What part of a manure's nutrients a crop gets, by situation. Publications differ: choose the row that fits.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class ManureAvailability
{
    private static readonly Catalog<ManureAvailability> Catalog = new(
        "availability of manure",
        () => Table.Read("Fertilizers/Data/manure-availability.csv", FromRow),
        a => a.Id,
        a => a.Status
    );

    private ManureAvailability(string id, string situation, ManurePool pool, Fraction available, Origin origin) =>
        (Id, Situation, Pool, Available, Origin) = (id, situation, pool, available, origin);

    /// <summary>Gets the availabilities that were read in a publication, in the order of the table.</summary>
    public static ImmutableArray<ManureAvailability> All => Catalog.All;

    /// <summary>Gets the availabilities that are from memory.</summary>
    internal static ImmutableArray<ManureAvailability> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the nitrogen of any manure spread in the growing season.</summary>
    public static ManureAvailability GrowingSeason => Find("any-manure-growing-season");

    /// <summary>Gets the id.</summary>
    public string Id { get; }

    /// <summary>Gets the manure and the time it is spread.</summary>
    public string Situation { get; }

    /// <summary>Gets what the part is of.</summary>
    public ManurePool Pool { get; }

    /// <summary>Gets the part available.</summary>
    public Fraction Available { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the figure is known to stand there.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Finds an availability, checked or not.</summary>
    /// <param name="id">Id such as <c>any-manure-growing-season</c>.</param>
    /// <returns>The availability.</returns>
    /// <exception cref="KeyNotFoundException">No availability has this id; the message lists all.</exception>
    public static ManureAvailability Find(string id) => Catalog.Find(id);

    /// <summary>Looks for an availability, checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The availability, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out ManureAvailability? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    private static ManureAvailability FromRow(CsvRow row) =>
        new(
            row.Text("id"),
            row.Text("situation"),
            row.Choice<ManurePool>("pool"),
            Fraction.FromPercent(row.Number("available_pct")),
            row.Origin()
        );

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Id;
}
