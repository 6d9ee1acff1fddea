using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>The published and customary limits of this room, from Spreading/Data/limits.csv.</summary>
internal static class SpreadLimits
{
    private static readonly Lazy<FrozenDictionary<string, CsvRow>> ById = new(() =>
        CsvTable
            .Embedded("Spreading/Data/limits.csv", "id", "value", "unit", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), StringComparer.Ordinal)
    );

    internal static double Value(string id) => ById.Value[id].Number("value");

    internal static string Source(string id) => ById.Value[id].SourceId();
}
