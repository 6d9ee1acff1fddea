using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <summary>Who publishes soil test methods, recommendations, targets and their rounding; rooms hang their own tables onto
/// it.</summary>
/// <example>
/// <code>
/// var state = Institution.Find("Oklahoma State University");
/// Console.WriteLine(state.FullName);
/// // Oklahoma State University
/// Console.WriteLine(Institution.Serving(Place.Find("Kansas"))[0]);
/// // Kansas
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public sealed class Institution : IEquatable<Institution>
{
    private static readonly Table<Institution> Table = new("Reference/Data/institutions.csv", row => new Institution(row));

    private static readonly Catalog<Institution> Catalog = new(
        "institution",
        () => Table.Rows,
        i => i.Id,
        namesOf: i => [i.Name, i.FullName, .. i.OtherNames]
    );

    private Institution(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        FullName = row.Text("full_name");
        OtherNames = row.List("other_names");
        Serves = [.. row.List("serves").Select(Place.Find)];
    }

    private Institution(string name)
    {
        Id = name;
        Name = name;
        FullName = name;
    }

    /// <summary>Gets every institution whose tables this library holds.</summary>
    public static ImmutableArray<Institution> All => Catalog.All;

    /// <summary>Gets North Carolina Department of Agriculture and Consumer Services.</summary>
    public static Institution NorthCarolina => Catalog.Find("north-carolina");

    /// <summary>Gets Oklahoma State University.</summary>
    public static Institution Oklahoma => Catalog.Find("oklahoma");

    /// <summary>Gets common practice, where no institution stands behind a number.</summary>
    public static Institution Practice => Catalog.Find("practice");

    /// <summary>Gets the id, such as <c>north-carolina</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the short name, mostly its state's.</summary>
    public string Name { get; }

    /// <summary>Gets the full name, as on its publications.</summary>
    public string FullName { get; }

    /// <summary>Gets the other names it goes by.</summary>
    public ImmutableArray<string> OtherNames { get; } = [];

    /// <summary>Gets the states or provinces it serves; empty where it serves no one place.</summary>
    public ImmutableArray<Place> Serves { get; } = [];

    /// <summary>Gets whether this library holds tables of it; a commercial laboratory is known by its name only.</summary>
    internal bool IsListed => Catalog.TryFind(Id, out var listed, out _) && ReferenceEquals(listed, this);

    /// <summary>Finds an institution by id or any of its names, blind to case.</summary>
    /// <param name="name">Id, short, full or other name.</param>
    /// <returns>The institution.</returns>
    /// <exception cref="KeyNotFoundException">No institution is called so; the message lists all.</exception>
    public static Institution Find(string name) => Catalog.Find(name);

    /// <summary>Looks for an institution by id or any of its names, blind to case.</summary>
    /// <param name="name">Id, short, full or other name.</param>
    /// <param name="institution">The institution, when there is one.</param>
    /// <param name="problem">What is wrong, when there is none; else empty.</param>
    /// <returns>True when an institution is called so.</returns>
    public static bool TryFind(string? name, [NotNullWhen(true)] out Institution? institution, out string problem) =>
        Catalog.TryFind(name, out institution, out problem);

    /// <summary>The institutions that serve a place.</summary>
    /// <param name="place">State or province.</param>
    /// <returns>The institutions; empty when no tables of any are held.</returns>
    public static ImmutableArray<Institution> Serving(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return [.. All.Where(i => i.Serves.Contains(place))];
    }

    /// <summary>A laboratory by the name on its report: the institution of that name, else one without tables.</summary>
    /// <param name="name">Name as on the report; not blank.</param>
    /// <returns>The institution.</returns>
    /// <exception cref="ArgumentException">The name is blank.</exception>
    public static Institution FindLaboratory(string name) =>
        TryFind(Guard.NotBlank(name), out var listed, out _) ? listed : new Institution(name.Trim());

    /// <summary>Tells whether two are the same institution.</summary>
    /// <param name="left">One institution.</param>
    /// <param name="right">Another.</param>
    /// <returns>True when they have the same id, or neither is there.</returns>
    public static bool operator ==(Institution? left, Institution? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Tells whether two are different institutions.</summary>
    /// <param name="left">One institution.</param>
    /// <param name="right">Another.</param>
    /// <returns>True when their ids differ.</returns>
    public static bool operator !=(Institution? left, Institution? right) => !(left == right);

    /// <inheritdoc/>
    public bool Equals(Institution? other) =>
        other is not null && string.Equals(Id, other.Id, StringComparison.OrdinalIgnoreCase);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Institution);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.OrdinalIgnoreCase.GetHashCode(Id);

    /// <summary>Length of the longest of its names that a text holds as whole words; 0 when it holds none.</summary>
    internal int LongestNameIn(string text)
    {
        int longest = 0;
        foreach (string name in (string[])[Name, FullName, .. OtherNames])
        {
            longest = WholeWords.Hold(text, name) ? Math.Max(longest, name.Length) : longest;
        }

        return longest;
    }

    /// <summary>The short name.</summary>
    /// <returns>Text such as <c>North Carolina</c>.</returns>
    public override string ToString() => Name;
}
