using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Land;

/// <summary>The limits at which this room speaks up, from Land/Data/limits.csv.</summary>
internal static class LandLimits
{
    private static readonly Lazy<FrozenDictionary<string, double>> Values = new(() =>
        CsvTable
            .Embedded("Land/Data/limits.csv", "id", "value", "unit", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), r => r.Number("value"), StringComparer.Ordinal)
    );

    internal static double Of(string id) => Values.Value[id];
}
