using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>How deep a kind's seed is placed.</summary>
public sealed class PlantingDepth
{
    /// <summary>Gets the shallowest placement; zero is the surface, rolled.</summary>
    public required Length Shallowest { get; init; }

    /// <summary>Gets the deepest placement.</summary>
    public required Length Deepest { get; init; }

    /// <summary>Gets the sources.</summary>
    public required KindEvidence Evidence { get; init; }

    internal static PlantingDepth FromRow(CsvRow row) =>
        new()
        {
            Shallowest = Length.FromInches(row.Number("shallowest_in")),
            Deepest = Length.FromInches(row.Number("deepest_in")),
            Evidence = KindEvidence.FromRow(row),
        };
}
