using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The lime a rate is counted in: one of the four labels of a rate. A ton of one basis is not a ton of
/// another.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class LimeBasis
{
    private static readonly Catalog<LimeBasis> Catalog = new(
        "lime basis",
        () => Table.Read("Liming/Data/bases.csv", r => new LimeBasis(r)).OrderBy(b => b.Id, StringComparer.Ordinal),
        b => b.Id,
        b => b.Status,
        "Ask the laboratory which lime its rate is counted in."
    );

    private LimeBasis(CsvRow row)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Origin = row.Origin();
        Figure = row.TextOrNull("index_id") is { } index
            ? LimeFigure.OfBasis(LimeIndex.Find(index), row.Number("index_value"))
            : null;
        IsInPounds = row.YesOrNo("in_pounds");
        AskedFirst = row.TextOrNull("asked_first") is null ? null : row.Integer("asked_first");
    }

    /// <summary>Gets the bases that were read in a publication, or are practice, in the order of their ids.</summary>
    public static ImmutableArray<LimeBasis> All => Catalog.All;

    /// <summary>Gets the bases that are from memory; a rate counted in one carries a finding.</summary>
    internal static ImmutableArray<LimeBasis> Unchecked => Catalog.Unchecked;

    /// <summary>Gets ground limestone whose strength its source does not print.</summary>
    public static LimeBasis GroundLimestone => Find("ground-limestone");

    /// <summary>Gets the agricultural limestone of Adams and Evans, two thirds as efficient as carbonate powder.</summary>
    public static LimeBasis AdamsEvansAgLime => Find("adams-evans-ag-lime");

    /// <summary>Gets the stable id.</summary>
    public string Id { get; }

    /// <summary>Gets the lime in words: what a pound or a ton is of.</summary>
    public string Name { get; }

    /// <summary>Gets the figure of this lime in the institution's own index; null when its strength is not printed.</summary>
    public LimeFigure? Figure { get; }

    /// <summary>Its place among those that a laboratory nobody knows may count in, the commonest first; null for the rest (common
    /// practice).</summary>
    internal int? AskedFirst { get; }

    /// <summary>Whether its rates are pounds of an index, which no bag holds as such.</summary>
    internal bool IsInPounds { get; }

    /// <summary>Whether it is ordinary ground limestone, whose strength no label states in its own terms.</summary>
    internal bool IsOrdinaryLime => Figure is null or { Index: { IsStatedOnly: true, IsRelative: false } };

    /// <summary>Gets how well it is known.</summary>
    public DataStatus Status => Origin.Status;

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    /// <summary>Gets the bases, checked or not, in the order of their ids.</summary>
    internal static ImmutableArray<LimeBasis> Everything => Catalog.Everything;

    /// <summary>Finds a basis, checked or not.</summary>
    /// <param name="id">Id, such as <c>oregon-score-100</c>.</param>
    /// <returns>The basis.</returns>
    /// <exception cref="KeyNotFoundException">No basis has this id; the message lists all.</exception>
    public static LimeBasis Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a basis, checked or not.</summary>
    /// <param name="id">Id; may be null.</param>
    /// <param name="entry">The basis, when there is one.</param>
    /// <param name="problem">What is wrong, with a list of all ids, when there is none; else empty.</param>
    /// <returns>True when there is one.</returns>
    internal static bool TryFind(string? id, [NotNullWhen(true)] out LimeBasis? entry, out string problem) =>
        Catalog.TryFind(id, out entry, out problem);

    /// <summary>The lime in words.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
