using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Legumes that share one inoculant. Match by the crop's name on the package, not by the letter.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class InoculantGroup
{
    private static readonly Catalog<InoculantGroup> Groups = new(
        "inoculant group",
        () => new Table<InoculantGroup>("Seeds/Data/inoculant-groups.csv", FromRow).Rows,
        g => g.Id,
        g => g.Evidence.Status
    );

    private InoculantGroup(string id, string name, string? letter, string bacterium, string hosts, Origin evidence)
    {
        Id = id;
        Name = name;
        Letter = letter;
        Bacterium = bacterium;
        Hosts = hosts;
        Evidence = evidence;
    }

    /// <summary>Gets the groups whose hosts and letter were read in a publication.</summary>
    public static ImmutableArray<InoculantGroup> All => Groups.All;

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
    public Origin Evidence { get; }

    /// <summary>Finds a group, checked or not.</summary>
    /// <param name="id">Id of the group.</param>
    /// <returns>The group.</returns>
    /// <exception cref="KeyNotFoundException">No group has this id; the message lists all.</exception>
    public static InoculantGroup Find(string id) => Groups.Find(id);

    /// <summary>Looks for a group, checked or not.</summary>
    /// <param name="id">Id of the group.</param>
    /// <param name="entry">The group, when there is one.</param>
    /// <param name="problem">What is wrong, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    public static bool TryFind(string? id, [NotNullWhen(true)] out InoculantGroup? entry, out string problem) =>
        Groups.TryFind(id, out entry, out problem);

    /// <summary>The name and letter.</summary>
    /// <returns>Text such as <c>pea and vetch (C)</c>.</returns>
    public override string ToString() => Letter is null ? Name : $"{Name} ({Letter})";

    private static InoculantGroup FromRow(CsvRow row) =>
        new(row.Text("id"), row.Text("name"), row.TextOrNull("letter"), row.Text("bacterium"), row.Text("hosts"), row.Origin());
}
