using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Lowest germination a state standard accepts, used here as the mark of a poor lot.</summary>
/// <remarks>West Virginia Code of State Rules 61-09, Appendix 1 (SEED-S37); kinds it does not list take its general floor.</remarks>
public static class GerminationFloors
{
    private const string AllOther = "all_other";

    private static readonly Lazy<FrozenDictionary<string, Fraction>> Floors = new(() =>
        CsvTable
            .Embedded(
                "Seeds/Data/germination-floors.csv",
                "id",
                "kind_ids",
                "minimum_germination_pct",
                "source_id",
                "locator",
                "status"
            )
            .Rows.SelectMany(r =>
                (r.TextOrNull("kind_ids") ?? (r.Text("id") == AllOther ? AllOther : ""))
                    .Split('|', StringSplitOptions.RemoveEmptyEntries)
                    .Select(id => KeyValuePair.Create(id, Fraction.FromPercent(r.Number("minimum_germination_pct"))))
            )
            .ToFrozenDictionary()
    );

    /// <summary>The floor for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>Lowest acceptable germination.</returns>
    public static Fraction For(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Floors.Value.TryGetValue(kind.Id, out var floor) ? floor : Floors.Value[AllOther];
    }
}
