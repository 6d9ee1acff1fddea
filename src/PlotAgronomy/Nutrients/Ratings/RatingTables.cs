using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>Reads the rating scales and their classes.</summary>
internal static class RatingTables
{
    private static readonly Lazy<ImmutableArray<(string System, RatingScale Scale)>> Scales = new(Load);

    internal static ImmutableArray<RatingScale> Of(string systemId) =>
        [.. Scales.Value.Where(s => s.System == systemId).Select(s => s.Scale)];

    internal static RatingScale Find(string scaleId) => Scales.Value.Single(s => s.Scale.Id == scaleId).Scale;

    private static ImmutableArray<(string, RatingScale)> Load()
    {
        var classes = CsvTable
            .Embedded(
                "Nutrients/Data/rating-classes.csv",
                "id",
                "scale",
                "order",
                "class",
                "printed_low",
                "printed_high",
                "high_included",
                "source_id",
                "locator",
                "status"
            )
            .Rows.ToLookup(r => r.Text("scale"), StringComparer.Ordinal);
        var table = CsvTable.Embedded(
            "Nutrients/Data/rating-scales.csv",
            "id",
            "system",
            "analyte",
            "extractants",
            "unit",
            "crops",
            "condition",
            "scope",
            "source_id",
            "locator",
            "status"
        );
        return
        [
            .. table.Rows.Select(row =>
                (
                    row.Text("system"),
                    new RatingScale
                    {
                        Id = row.Text("id"),
                        Analyte = Element(row),
                        Extractants = row.Choices<Extractant>("extractants"),
                        Unit = row.TextOrNull("unit") is null ? null : row.Choice<SoilTestUnit>("unit"),
                        Crops = row.Choices<CropRow>("crops"),
                        Condition = row.TextOrNull("condition") is null
                            ? ScaleCondition.None
                            : row.Choice<ScaleCondition>("condition"),
                        Scope = row.Text("scope"),
                        Classes = ClassesFrom(classes[row.Text("id")]),
                        SourceIds =
                        [
                            .. classes[row.Text("id")]
                                .Select(r => r.SourceId())
                                .Append(row.SourceId())
                                .SelectMany(s => s.Split(';'))
                                .Distinct(),
                        ],
                    }
                )
            ),
        ];
    }

    private static ImmutableArray<RatingClass> ClassesFrom(IEnumerable<CsvRow> rows)
    {
        var classes = ImmutableArray.CreateBuilder<RatingClass>();
        foreach (var row in rows)
        {
            var below = classes.Count == 0 ? null : classes[^1];
            classes.Add(
                new RatingClass
                {
                    Order = row.Integer("order"),
                    Name = row.Text("class"),
                    PrintedLow = row.Number("printed_low"),
                    PrintedHigh = row.NumberOrNull("printed_high"),
                    HighIncluded = row.TextOrNull("high_included") == "yes",
                    StartsAt = below?.PrintedHigh ?? 0,
                    StartIncluded = below is null || !below.HighIncluded,
                    Status = row.Status(),
                    SourceId = row.SourceId(),
                }
            );
        }

        return classes.ToImmutable();
    }

    private static SoilAnalyte Element(CsvRow row) =>
        row.Text("analyte") switch
        {
            "P" => SoilAnalyte.Phosphorus,
            "K" => SoilAnalyte.Potassium,
            "Ca" => SoilAnalyte.Calcium,
            "Mg" => SoilAnalyte.Magnesium,
            "S" => SoilAnalyte.Sulfur,
            "B" => SoilAnalyte.Boron,
            "Zn" => SoilAnalyte.Zinc,
            "Mn" => SoilAnalyte.Manganese,
            "Cu" => SoilAnalyte.Copper,
            "Fe" => SoilAnalyte.Iron,
            "Salts" => SoilAnalyte.SolubleSalts,
            _ => throw row.Problem("analyte", "unknown element"),
        };
}
