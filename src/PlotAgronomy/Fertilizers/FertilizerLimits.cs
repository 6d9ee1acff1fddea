using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>The thresholds behind cautions and tolerances.</summary>
internal static class FertilizerLimits
{
    private static readonly Lazy<FrozenDictionary<string, double>> ById = new(() =>
        CsvTable
            .Embedded("Fertilizers/Data/limits.csv", "id", "value", "unit", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), r => r.Number("value"), StringComparer.Ordinal)
    );

    internal static double Of(string id) => ById.Value[id];
}
