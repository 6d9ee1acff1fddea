using PlotAgronomy.Reference;

namespace PlotAgronomy.Soil;

/// <summary>What one unit of a laboratory's index stands for: mg/dm3 in North Carolina, ppm elsewhere.</summary>
internal sealed class IndexScale
{
    private static readonly Lazy<ILookup<SoilTestUnit, IndexScale>> ByUnit = new Table<IndexScale>(
        "Soil/Data/index-scales.csv",
        FromRow
    ).GroupedBy(s => s.Unit);

    internal required SoilTestUnit Unit { get; init; }

    /// <summary>Analyte, or null when the scale holds for every one.</summary>
    internal required SoilAnalyte? Analyte { get; init; }

    internal required double PerIndexUnit { get; init; }

    internal required Origin Origin { get; init; }

    internal static IndexScale? Find(SoilTestUnit unit, SoilAnalyte analyte) =>
        ByUnit.Value[unit].FirstOrDefault(s => s.Analyte is null || s.Analyte == analyte);

    internal static bool Accepts(Extractant extractant) =>
        extractant is Extractant.Mehlich3 or Extractant.Mehlich3Icp or Extractant.Mehlich3Colorimetric or Extractant.NotStated;

    private static IndexScale FromRow(CsvRow row) =>
        new()
        {
            Unit = row.Choice<SoilTestUnit>("unit"),
            Analyte = row.TextOrNull("analyte") is null ? null : row.Choice<SoilAnalyte>("analyte"),
            PerIndexUnit = row.Number("concentration_per_index_unit"),
            Origin = row.Origin(),
        };
}
