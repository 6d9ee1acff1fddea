using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>A region of the southern states by which some limits differ.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SoilRegion
{
    private static readonly Table<SoilRegion> Table = new("Soil/Data/regions.csv", row => new SoilRegion(row));

    private static readonly Catalog<SoilRegion> Catalog = new("soil region", () => Table.Rows, r => r.Id, namesOf: r => [r.Name]);

    private SoilRegion(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Institution = row.TextOrNull("institution_id") is null ? null : row.Institution();
        Origin = row.Origin();
    }

    /// <summary>Gets every region.</summary>
    public static ImmutableArray<SoilRegion> All => Catalog.All;

    /// <summary>Gets the Coastal Plain.</summary>
    public static SoilRegion CoastalPlain { get; } = Find("coastal-plain");

    /// <summary>Gets the Piedmont and the mountains.</summary>
    public static SoilRegion Piedmont { get; } = Find("piedmont");

    /// <summary>Gets the id, such as <c>coastal-plain</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name, as a plan file has it, such as <c>coastal plain</c>.</summary>
    public string Name { get; }

    /// <summary>Gets the institution whose own region it is; null where several use it.</summary>
    public Institution? Institution { get; }

    /// <summary>Where the region is printed.</summary>
    internal Origin Origin { get; }

    /// <summary>Finds a region by id or name, blind to case.</summary>
    /// <param name="name">Id or name.</param>
    /// <returns>The region.</returns>
    /// <exception cref="KeyNotFoundException">No region is called so; the message lists all.</exception>
    public static SoilRegion Find(string name) => Catalog.Find(name);

    /// <summary>Looks for a region by id or name, blind to case.</summary>
    /// <param name="name">Id or name; may be null.</param>
    /// <param name="region">The region, or null.</param>
    /// <param name="problem">Why there is none, with a list of all ids; empty when there is one.</param>
    /// <returns>True when a region is called so.</returns>
    internal static bool TryFind(string? name, [NotNullWhen(true)] out SoilRegion? region, out string problem) =>
        Catalog.TryFind(name, out region, out problem);

    /// <summary>The name.</summary>
    /// <returns>Text such as <c>coastal plain</c>.</returns>
    public override string ToString() => Name;
}
