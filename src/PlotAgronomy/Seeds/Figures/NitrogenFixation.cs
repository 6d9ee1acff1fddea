using PlotAgronomy.Reference;

namespace PlotAgronomy.Seeds;

/// <summary>Nitrogen a legume fixes in a year, as N.</summary>
public sealed class NitrogenFixation
{
    /// <summary>Gets the nitrogen fixed where the legume is about a quarter of the stand.</summary>
    public required ApplicationRate QuarterStand { get; init; }

    /// <summary>Gets the nitrogen fixed by a pure stand in good conditions.</summary>
    public required ApplicationRate PureStand { get; init; }

    /// <summary>Gets the sources.</summary>
    public required KindEvidence Evidence { get; init; }

    internal static NitrogenFixation FromRow(CsvRow row) =>
        new()
        {
            QuarterStand = ApplicationRate.FromPoundsPerAcre(row.Number("low_lb_n_per_ac")),
            PureStand = ApplicationRate.FromPoundsPerAcre(row.Number("high_lb_n_per_ac")),
            Evidence = KindEvidence.FromRow(row),
        };
}
