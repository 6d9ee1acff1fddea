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

    private static readonly Lazy<ImmutableArray<KindFile>> Files = new(() =>
        [
            .. CsvTable
                .EmbeddedNames.Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(n => Make(CsvTable.Embedded(n))),
        ]
    );

    private KindFile(string path, ImmutableArray<KindObservation> observations)
    {
        Path = path;
        Id = path[(path.LastIndexOf('/') + 1)..^Extension.Length];
        Figures = [.. observations.Where(o => !o.IsPlantingWindow)];
        PlantingWindows = [.. observations.Where(o => o.IsPlantingWindow)];
    }

    /// <summary>The files of all published kinds, by id.</summary>
    internal static ImmutableArray<KindFile> All => Files.Value;

    internal string Path { get; }

    /// <summary>Id of the kind: the name of the file.</summary>
    internal string Id { get; }

    /// <summary>Names and figures: all but the planting windows.</summary>
    internal ImmutableArray<KindObservation> Figures { get; }

    /// <summary>Planting dates, as many as publications give.</summary>
    internal ImmutableArray<KindObservation> PlantingWindows { get; }

    /// <summary>A file that was not embedded, and so not checked before.</summary>
    internal static KindFile Read(CsvTable table)
    {
        Table.Check(table);
        return Make(table);
    }

    private static KindFile Make(CsvTable table) => new(table.Name, Table.Read(table, r => new KindObservation(r)));
}
