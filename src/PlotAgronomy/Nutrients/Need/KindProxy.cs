using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What a kind is taken as where published tables do not know it: rows of crops nearest first, a nitrogen rule,
/// a removal figure. Common practice; every part can be overridden.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class KindProxy
{
    private static readonly Lazy<IReadOnlyDictionary<string, KindProxy>> ById = Table.Keyed(
        "Nutrients/Data/kind-proxies.csv",
        r => r.Text("id"),
        r => new KindProxy(r)
    );

    private readonly ImmutableArray<CropRow> ownRows;
    private readonly ImmutableArray<CropRow> browsedRows;

    private KindProxy(CsvRow row)
    {
        ownRows = row.Choices<CropRow>("own_rows");
        Rows = row.Choices<CropRow>("crop_rows");
        browsedRows = row.TextOrNull("browsed_rows") is null ? Rows : row.Choices<CropRow>("browsed_rows");
        Nitrogen = NitrogenRule.Find(row.Text("nitrogen_rule_id"));
        Removal = row.TextOrNull("removal_id") is { } removal ? RemovalFigure.Find(removal) : null;
        IsSensitiveToBoron = row.YesOrNo("sensitive_to_boron");
    }

    /// <summary>Gets the crop rows it may be taken as, nearest first.</summary>
    public ImmutableArray<CropRow> Rows { get; }

    /// <summary>Gets the nitrogen rule.</summary>
    public NitrogenRule Nitrogen { get; }

    /// <summary>Gets the removal figure for a crop that is carried off, or null when none fits.</summary>
    public RemovalFigure? Removal { get; }

    /// <summary>Gets whether boron harms it early: small grain, corn, sorghum, millet and bean.</summary>
    public bool IsSensitiveToBoron { get; }

    /// <summary>Finds what a kind is taken as; a kind of the user's own is taken as its functional group.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>The proxy.</returns>
    public static KindProxy For(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return ById.Value.TryGetValue(kind.Id, out var proxy) ? proxy : ById.Value[KindGroups.IdOf(kind)];
    }

    /// <summary>Whether a row was made for the kind itself, or for a food plot whatever is sown on it: then nothing stands in for
    /// it.</summary>
    /// <param name="row">Crop row.</param>
    /// <returns>True when the kind is not merely taken as this row.</returns>
    public bool IsOwn(CropRow row) => CropRows.IsWildlifePlot(Guard.Defined(row)) || ownRows.Contains(row);

    /// <summary>The nearest row a system has for a nutrient.</summary>
    /// <param name="system">System.</param>
    /// <param name="nutrient">Phosphate or potash.</param>
    /// <param name="isBrowsed">Whether it is only browsed: then an annual legume is not taken as hay of alfalfa.</param>
    /// <returns>The row, or null when the system has none of them.</returns>
    public CropRow? RowIn(RecommendationSystem system, PlantNutrient nutrient, bool isBrowsed = false)
    {
        ArgumentNullException.ThrowIfNull(system);
        foreach (var row in RowsIn(system, nutrient, isBrowsed))
        {
            return row;
        }

        return null;
    }

    internal ImmutableArray<CropRow> RowsOf(bool isBrowsed) => isBrowsed ? browsedRows : Rows;

    /// <summary>The rows a system has for a nutrient, nearest first.</summary>
    internal IEnumerable<CropRow> RowsIn(RecommendationSystem system, PlantNutrient nutrient, bool isBrowsed)
    {
        foreach (var row in RowsOf(isBrowsed))
        {
            if (system.Has(row, nutrient))
            {
                yield return row;
            }
        }
    }

    /// <summary>The rows it is taken as.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"taken as {string.Join(", ", Rows.Select(CropRows.WordsFor))}; {Nitrogen}";
}
