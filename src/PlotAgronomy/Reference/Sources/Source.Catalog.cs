using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Reference;

namespace PlotAgronomy;

/// <content>Every source named beside a number in this library.</content>
public sealed partial class Source
{
    private static readonly Table<Source> Table = new("Reference/Data/sources.csv", row => new Source(row, Find));
    private static readonly Catalog<Source> Catalog = new("source", () => Table.Rows, s => s.Id);

    /// <summary>Gets the version of the reference data; it changes whenever a published number in the tables does.</summary>
    public static string DataVersion => "2026.11";

    /// <summary>Gets all sources, in the order of their ids.</summary>
    public static ImmutableArray<Source> All => [.. Catalog.All.OrderBy(s => s.Id, StringComparer.Ordinal)];

    /// <summary>Gets the definitions of the units.</summary>
    internal static Source UnitDefinitions => Catalog.All.First(s => s.Kind == SourceKind.ExactUnits);

    /// <summary>Gets practice of the trade, where no publication stands behind a sum.</summary>
    internal static Source Practice => Catalog.All.First(s => s.Kind == SourceKind.Practice);

    /// <summary>Finds a source.</summary>
    /// <param name="id">Source id.</param>
    /// <returns>The source.</returns>
    /// <exception cref="KeyNotFoundException">No source has this id; the message lists all.</exception>
    public static Source Find(string id) => Catalog.Find(id);

    /// <summary>Looks for a source.</summary>
    /// <param name="id">Source id.</param>
    /// <param name="source">The source, when there is one.</param>
    /// <param name="problem">What is wrong, when there is none; else empty.</param>
    /// <returns>True when a source has this id.</returns>
    public static bool TryFind(string? id, [NotNullWhen(true)] out Source? source, out string problem) =>
        Catalog.TryFind(id, out source, out problem);
}
