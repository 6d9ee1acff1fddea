using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Soil pH a kind stands and the band to aim for, all in water.</summary>
public sealed class PhTolerance
{
    /// <summary>Gets the lowest pH tolerated.</summary>
    public required double MinimumPh { get; init; }

    /// <summary>Gets the lower end of the band to aim for.</summary>
    public required double BestPhFrom { get; init; }

    /// <summary>Gets the upper end of the band to aim for.</summary>
    public required double BestPhTo { get; init; }

    /// <summary>Gets the highest pH tolerated.</summary>
    public required double MaximumPh { get; init; }

    /// <summary>Gets the sources of the limits.</summary>
    public required KindEvidence Evidence { get; init; }

    /// <summary>Gets the sources of the band to aim for; those of the limits when nothing else is said.</summary>
    public KindEvidence BestEvidence
    {
        get => field ?? Evidence;
        init;
    }

    internal static PhTolerance FromRow(CsvRow row) =>
        new()
        {
            MinimumPh = row.Number("minimum_ph"),
            BestPhFrom = row.Number("best_low_ph"),
            BestPhTo = row.Number("best_high_ph"),
            MaximumPh = row.Number("maximum_ph"),
            Evidence = KindEvidence.FromRow(row),
            BestEvidence = KindEvidence.FromRow(row, "best_status"),
        };
}
