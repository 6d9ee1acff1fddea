using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>The file of one kind: its names, then what publications say of it, one observation a row.</summary>
/// <remarks>
/// The columns are <c>figure,method,purpose,region,low,high,unit,note,source_id,locator,status</c>. What stands where:
/// <list type="bullet">
/// <item>a number stands in <c>low</c>, a range of numbers in <c>low</c> and <c>high</c>, with its <c>unit</c>;</item>
/// <item>words stand in <c>note</c>, also the values of an enumeration (<c>somewhat-poor</c>) and <c>yes</c> or <c>no</c>;</item>
/// <item><c>method</c> tells apart what shares a figure: drilled and broadcast rate, best and tolerated pH, the hazards;</item>
/// <item><c>region</c> stands with planting windows only, whose days are written <c>09-01</c>;</item>
/// <item><c>purpose</c> says what a publication prints a number for: plots, forage, cover crops, grain;</item>
/// <item>a number with a note <c>aside: reason</c> is kept and does not speak.</item>
/// </list>
/// </remarks>
internal sealed class KindFile
{
    private const string Folder = "Seeds/Data/kinds/";
    private const string Extension = ".csv";

    private static readonly Lazy<Dictionary<string, KindFile>> Files = new(() =>
        CsvTable
            .EmbeddedNames.Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Select(path => new KindFile(path, () => CsvTable.EmbeddedHead(path, IsName), () => CsvTable.Embedded(path)))
            .ToDictionary(f => f.Id, StringComparer.Ordinal)
    );

    private readonly Lazy<ImmutableArray<KindObservation>> names;
    private readonly Lazy<ImmutableArray<KindObservation>> all;

    private KindFile(string path, Func<CsvTable> head, Func<CsvTable> whole)
    {
        Path = path;
        Id = path[(path.LastIndexOf('/') + 1)..^Extension.Length];
        names = new(() => [.. Table.Read(head(), r => new KindObservation(r)).Where(o => IsName(o.Figure))]);
        all = new(() => Table.Read(whole(), r => new KindObservation(r)));
    }

    /// <summary>The files of all published kinds, by id.</summary>
    internal static IReadOnlyCollection<KindFile> All => Files.Value.Values;

    internal string Path { get; }

    /// <summary>Id of the kind: the name of the file.</summary>
    internal string Id { get; }

    /// <summary>What the kind is called and its place in the list. They stand first in the file, and the rest is not read for
    /// them.</summary>
    internal ImmutableArray<KindObservation> Names => names.Value;

    /// <summary>Names and figures: all but the planting windows.</summary>
    internal IEnumerable<KindObservation> Figures => all.Value.Where(o => !o.IsPlantingWindow);

    /// <summary>Planting dates, as many as publications give.</summary>
    internal IEnumerable<KindObservation> PlantingWindows => all.Value.Where(o => o.IsPlantingWindow);

    /// <summary>The file of a published kind; null for another id.</summary>
    internal static KindFile? Find(string id) => Files.Value.GetValueOrDefault(id);

    /// <summary>A file that was not embedded, and so not checked before.</summary>
    internal static KindFile Read(CsvTable table)
    {
        Table.Check(table);
        return new(table.Name, () => table, () => table);
    }

    /// <summary>Whether a figure is a name or the place in the list.</summary>
    internal static bool IsName(string figure) =>
        figure is "order" or "common-name" or "short-name" or "scientific-name" or "other-name";
}
