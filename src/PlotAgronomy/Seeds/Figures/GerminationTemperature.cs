using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Seeds;

/// <summary>Soil temperatures for germination: seed zone, daily average.</summary>
public sealed class GerminationTemperature
{
    /// <summary>Gets the lowest temperature for acceptable (not first) germination.</summary>
    public required Temperature Minimum { get; init; }

    /// <summary>Gets the lower end of the best range.</summary>
    public required Temperature BestFrom { get; init; }

    /// <summary>Gets the upper end of the best range.</summary>
    public required Temperature BestTo { get; init; }

    /// <summary>Gets the sources of the lowest temperature.</summary>
    public required KindEvidence Evidence { get; init; }

    /// <summary>Gets the sources of the best range; those of the lowest temperature when nothing else is said.</summary>
    public KindEvidence BestEvidence
    {
        get => field ?? Evidence;
        init;
    }

    internal static GerminationTemperature FromRow(CsvRow row) =>
        new()
        {
            Minimum = Temperature.FromDegreesFahrenheit(row.Number("minimum_f")),
            BestFrom = Temperature.FromDegreesFahrenheit(row.Number("best_low_f")),
            BestTo = Temperature.FromDegreesFahrenheit(row.Number("best_high_f")),
            Evidence = KindEvidence.FromRow(row),
            BestEvidence = KindEvidence.FromRow(row, "best_status"),
        };
}
