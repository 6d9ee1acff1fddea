using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>A state or province, by which institutions and planting dates are found.</summary>
/// <remarks>Places are named and coded as ISO 3166-2 does.</remarks>
/// <example>
/// <code>
/// var place = Place.Find("North Carolina");
/// Console.WriteLine($"{place.Name}, {place.IsoCode}");
/// // North Carolina, US-NC
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class Place
{
    private static readonly Table<Place> Table = new("Reference/Data/places.csv", row => new Place(row));
    private static readonly Catalog<Place> Catalog = new("place", () => Table.Rows, p => p.Id, namesOf: p => [p.Name, p.IsoCode]);

    private Place(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        IsoCode = row.Text("iso_code");
    }

    /// <summary>Gets every place.</summary>
    public static ImmutableArray<Place> All => Catalog.All;

    /// <summary>Gets the id, such as <c>north-carolina</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name, such as <c>North Carolina</c>.</summary>
    public string Name { get; }

    /// <summary>Gets the code of ISO 3166-2, such as <c>US-NC</c>.</summary>
    public string IsoCode { get; }

    /// <summary>Finds a place by id, name or code, blind to case.</summary>
    /// <param name="name">Id, name or code.</param>
    /// <returns>The place.</returns>
    /// <exception cref="KeyNotFoundException">No place is called so; the message lists all.</exception>
    public static Place Find(string name) => Catalog.Find(name);

    /// <summary>Looks for a place by id, name or code, blind to case.</summary>
    /// <param name="name">Id, name or code.</param>
    /// <param name="place">The place, when there is one.</param>
    /// <param name="problem">What is wrong, when there is none; else empty.</param>
    /// <returns>True when a place is called so.</returns>
    public static bool TryFind(string? name, [NotNullWhen(true)] out Place? place, out string problem) =>
        Catalog.TryFind(name, out place, out problem);

    /// <summary>The name.</summary>
    /// <returns>Text such as <c>North Carolina</c>.</returns>
    public override string ToString() => Name;
}
