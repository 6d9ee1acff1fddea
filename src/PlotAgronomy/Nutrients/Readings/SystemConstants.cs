using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The coefficients of the systems, each with its source and standing.</summary>
internal static class SystemConstants
{
    private static readonly Lazy<FrozenDictionary<string, SystemConstant>> ById = new(() =>
        CsvTable
            .Embedded("Nutrients/Data/system-constants.csv", "id", "value", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(
                r => r.Text("id"),
                r => new SystemConstant(r.Number("value"), r.SourceId(), r.Status()),
                StringComparer.Ordinal
            )
    );

    internal static SystemConstant Find(string id) => ById.Value[id];

    internal static double Value(string id) => Find(id).Value;
}
