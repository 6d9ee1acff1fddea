using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Legal or trade weight of a bushel. A volume guide only: weigh the hopper.</summary>
public sealed class BushelWeight
{
    /// <summary>Gets the lightest published density.</summary>
    public required Density Low { get; init; }

    /// <summary>Gets the heaviest published density.</summary>
    public required Density High { get; init; }

    /// <summary>Gets the sources.</summary>
    public required KindEvidence Evidence { get; init; }

    internal static BushelWeight FromRow(CsvRow row) =>
        new()
        {
            Low = Density.FromPoundsPerCubicFoot(row.Number("low_lb_per_bu") / ExactUnits.CubicFeetPerBushel),
            High = Density.FromPoundsPerCubicFoot(row.Number("high_lb_per_bu") / ExactUnits.CubicFeetPerBushel),
            Evidence = KindEvidence.FromRow(row),
        };
}
