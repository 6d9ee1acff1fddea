using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Liming;

/// <summary>The single published numbers of this room's formulas, by id.</summary>
internal static class LimeConstants
{
    private static readonly Lazy<FrozenDictionary<string, double>> ById = new(() =>
        CsvTable
            .Embedded("Liming/Data/constants.csv", "id", "value", "unit", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), r => r.Number("value"), StringComparer.Ordinal)
    );

    internal static double Of(string id) => ById.Value[id];
}
