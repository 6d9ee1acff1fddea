using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Legumes that share one inoculant. Match by the crop's name on the package, not by the letter.</summary>
public sealed class InoculantGroup
{
    private static readonly Lazy<ImmutableArray<InoculantGroup>> Table = new(() =>
        [
            .. CsvTable
                .Embedded(
                    "Seeds/Data/inoculant-groups.csv",
                    "id",
                    "name",
                    "letter",
                    "bacterium",
                    "hosts",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(FromRow),
        ]
    );

    private InoculantGroup(string id, string name, string? letter, string bacterium, string hosts, KindEvidence evidence)
    {
        Id = id;
        Name = name;
        Letter = letter;
        Bacterium = bacterium;
        Hosts = hosts;
        Evidence = evidence;
    }

    /// <summary>Gets all groups.</summary>
    public static IReadOnlyList<InoculantGroup> All => Table.Value;

    /// <summary>Gets the stable id, such as <c>pea-vetch</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the letter of the trade, or null; publications disagree on letters.</summary>
    public string? Letter { get; }

    /// <summary>Gets the bacterium.</summary>
    public string Bacterium { get; }

    /// <summary>Gets the crops it serves, in words.</summary>
    public string Hosts { get; }

    /// <summary>Gets the sources.</summary>
    public KindEvidence Evidence { get; }

    /// <summary>Finds a group.</summary>
    /// <param name="id">Id of the group.</param>
    /// <returns>The group.</returns>
    /// <exception cref="KeyNotFoundException">No group has this id.</exception>
    public static InoculantGroup Find(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return Table.Value.FirstOrDefault(g => g.Id == id)
            ?? throw new KeyNotFoundException(
                $"No inoculant group has the id '{id}'; there are: {string.Join(", ", Table.Value.Select(g => g.Id))}."
            );
    }

    /// <summary>The name and letter.</summary>
    /// <returns>Text such as <c>pea and vetch (C)</c>.</returns>
    public override string ToString() => Letter is null ? Name : $"{Name} ({Letter})";

    private static InoculantGroup FromRow(CsvRow row) =>
        new(
            row.Text("id"),
            row.Text("name"),
            row.TextOrNull("letter"),
            row.Text("bacterium"),
            row.Text("hosts"),
            KindEvidence.FromRow(row)
        );
}
