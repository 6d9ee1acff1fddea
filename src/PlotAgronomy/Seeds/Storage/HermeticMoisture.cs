using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Wettest that seed may be when it is sealed hermetically, wet basis (7 CFR 201.36c, SEED-S25).</summary>
public static class HermeticMoisture
{
    private const string AllOther = "all_other";

    private static readonly Lazy<FrozenDictionary<string, Fraction>> Ceilings = new(() =>
        CsvTable
            .Embedded("Seeds/Data/hermetic-moisture.csv", "id", "kind_ids", "most_moisture_pct", "source_id", "locator", "status")
            .Rows.SelectMany(r =>
                (r.Text("id") == AllOther ? AllOther : r.Text("kind_ids"))
                    .Split('|')
                    .Select(id => KeyValuePair.Create(id, Fraction.FromPercent(r.Number("most_moisture_pct"))))
            )
            .ToFrozenDictionary()
    );

    /// <summary>The ceiling for a kind.</summary>
    /// <param name="kind">Kind.</param>
    /// <returns>Most moisture, wet basis.</returns>
    public static Fraction CeilingFor(CropKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return Ceilings.Value.TryGetValue(kind.Id, out var ceiling) ? ceiling : Ceilings.Value[AllOther];
    }
}
