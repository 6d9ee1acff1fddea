using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>What one unit of a laboratory's index stands for: mg/dm3 in North Carolina, ppm elsewhere.</summary>
internal sealed class IndexScale
{
    private static readonly Lazy<ImmutableArray<IndexScale>> All = new(Load);

    internal required SoilTestUnit Unit { get; init; }

    /// <summary>Analyte, or null when the scale holds for every one.</summary>
    internal required SoilAnalyte? Analyte { get; init; }

    internal required double PerIndexUnit { get; init; }

    internal required string SourceId { get; init; }

    internal required DataStatus Status { get; init; }

    internal static IndexScale? Find(SoilTestUnit unit, SoilAnalyte analyte) =>
        All.Value.FirstOrDefault(s => s.Unit == unit && (s.Analyte is null || s.Analyte == analyte));

    internal static bool Accepts(Extractant extractant) =>
        extractant is Extractant.Mehlich3 or Extractant.Mehlich3Icp or Extractant.Mehlich3Colorimetric or Extractant.NotStated;

    private static ImmutableArray<IndexScale> Load() =>
        [
            .. CsvTable
                .Embedded(
                    "Soil/Data/index-scales.csv",
                    "id",
                    "unit",
                    "analyte",
                    "concentration_per_index_unit",
                    "concentration_unit",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r => new IndexScale
                {
                    Unit = r.Choice<SoilTestUnit>("unit"),
                    Analyte = r.TextOrNull("analyte") is null ? null : r.Choice<SoilAnalyte>("analyte"),
                    PerIndexUnit = r.Number("concentration_per_index_unit"),
                    SourceId = r.SourceId(),
                    Status = r.Status(),
                }),
        ];
}
