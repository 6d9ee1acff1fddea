using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>Total nutrients in a manure or litter, as a range in lb per short ton as it is spread.</summary>
/// <remarks>Litter varies widely: analyse the lot. A single printed figure has both ends alike.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class Manure
{
    private static readonly Catalog<Manure> Catalog = new(
        "manure",
        () => Table.Read("Fertilizers/Data/manures.csv", FromRow),
        m => m.Id,
        m => m.Status
    );

    private Manure(
        string id,
        string name,
        PoundsPerTonRange nitrogen,
        PoundsPerTonRange phosphate,
        PoundsPerTonRange potash,
        Origin origin
    )
    {
        Id = id;
        Name = name;
        Nitrogen = nitrogen;
        Phosphate = phosphate;
        Potash = potash;
        Origin = origin;
    }

    /// <summary>Gets the manures whose figures were read in a publication, in the order of the table.</summary>
    public static ImmutableArray<Manure> All => Catalog.All;

    /// <summary>Gets the manures whose figures are from memory.</summary>
    internal static ImmutableArray<Manure> Unchecked => Catalog.Unchecked;

    /// <summary>Gets the id.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets total N.</summary>
    public PoundsPerTonRange Nitrogen { get; }

    /// <summary>Gets total P2O5.</summary>
    public PoundsPerTonRange Phosphate { get; }

    /// <summary>Gets total K2O.</summary>
    public PoundsPerTonRange Potash { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets how well the figures are known to stand there.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Finds a manure, checked or not.</summary>
    /// <param name="id">Id such as <c>poultry-litter-broiler</c>.</param>
    /// <returns>The manure.</returns>
    /// <exception cref="KeyNotFoundException">No manure has this id; the message lists all.</exception>
    public static Manure Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a manure, checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The manure, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out Manure? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>A lot with its own analysis.</summary>
    /// <param name="name">Name of the lot.</param>
    /// <param name="nitrogen">Total N, lb per short ton as spread; at least 0.</param>
    /// <param name="phosphate">Total P2O5, lb per short ton; at least 0.</param>
    /// <param name="potash">Total K2O, lb per short ton; at least 0.</param>
    /// <returns>The lot.</returns>
    /// <exception cref="ArgumentException">No name, or a value outside its range.</exception>
    public static Manure Analyzed(string name, double nitrogen, double phosphate, double potash) =>
        new(
            "analyzed",
            Guard.NotBlank(name),
            Exactly(nitrogen, nameof(nitrogen)),
            Exactly(phosphate, nameof(phosphate)),
            Exactly(potash, nameof(potash)),
            new(Source.Practice, DataStatus.Read)
        );

    private static PoundsPerTonRange Exactly(double poundsPerTon, string name) =>
        PoundsPerTonRange.Between(Guard.AtLeast(poundsPerTon, 0, "lb/ton", name), poundsPerTon);

    private static Manure FromRow(CsvRow row) =>
        new(row.Text("id"), row.Text("name"), Range(row, "n"), Range(row, "p2o5"), Range(row, "k2o"), row.Origin());

    private static PoundsPerTonRange Range(CsvRow row, string nutrient) =>
        PoundsPerTonRange.Between(row.Number($"{nutrient}_low_lb_per_ton"), row.Number($"{nutrient}_high_lb_per_ton"));

    /// <summary>The name and what a ton holds.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Name}: N {Nitrogen}, P2O5 {Phosphate}, K2O {Potash}";
}
