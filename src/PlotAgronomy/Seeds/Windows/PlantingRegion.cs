using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>A broad region of the eastern United States, by which planting dates are found.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class PlantingRegion
{
    private static readonly Catalog<PlantingRegion> Regions = new(
        "planting region",
        () => new Table<PlantingRegion>("Seeds/Data/regions.csv", row => new PlantingRegion(row)).Rows,
        r => r.Id,
        namesOf: r => [r.Name]
    );

    private PlantingRegion(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Covers = row.Text("covers");
        Origin = row.Origin();
    }

    /// <summary>Gets every region, from north to south.</summary>
    public static ImmutableArray<PlantingRegion> All => Regions.All;

    /// <summary>Gets the upper Midwest, New York, New England, north and central Pennsylvania.</summary>
    public static PlantingRegion North => Regions.Find("north");

    /// <summary>Gets the stable id, such as <c>north</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets what it covers, in words.</summary>
    public string Covers { get; }

    internal Origin Origin { get; }

    /// <summary>Finds a region by id or name, blind to case.</summary>
    /// <param name="name">Id or name.</param>
    /// <returns>The region.</returns>
    /// <exception cref="KeyNotFoundException">No region is called so; the message lists all.</exception>
    public static PlantingRegion Find(string name) => Regions.Find(name);

    /// <summary>Looks for a region by id or name, blind to case.</summary>
    /// <param name="name">Id or name.</param>
    /// <param name="region">The region, when there is one.</param>
    /// <param name="problem">What is wrong, when there is none; else empty.</param>
    /// <returns>True when a region is called so.</returns>
    public static bool TryFind(string? name, [NotNullWhen(true)] out PlantingRegion? region, out string problem) =>
        Regions.TryFind(name, out region, out problem);

    /// <summary>The name.</summary>
    /// <returns>Text such as <c>North</c>.</returns>
    public override string ToString() => Name;

    /// <summary>The region of an id in a table, which names it by no other name.</summary>
    internal static PlantingRegion Of(CsvRow row, string column)
    {
        string id = row.Text(column);
        if (!TryFind(id, out var region, out string problem))
        {
            throw row.Problem(column, problem);
        }

        return region.Id == id ? region : throw row.Problem(column, $"expected the id '{region.Id}', found '{id}'");
    }
}
