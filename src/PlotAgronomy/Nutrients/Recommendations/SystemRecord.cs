using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>What the table says of one recommendation system.</summary>
internal sealed record SystemRecord(
    string Id,
    string Name,
    Institution Institution,
    string Edition,
    SystemSum Sum,
    string? Property,
    string? NextId,
    string? NextInWords,
    SystemPhilosophy Philosophy,
    double DepthLowInches,
    double DepthHighInches,
    bool TakesOrganicSoil,
    string InWords,
    ImmutableArray<Source> Sources,
    DataStatus Status,
    ImmutableArray<AcceptedTest> Accepts
)
{
    private static readonly Table<SystemRecord> Table = new("Nutrients/Data/systems.csv", FromRow);

    private static readonly Lazy<ILookup<string, AcceptedTest>> Tests = Reference.Table.Grouped(
        "Nutrients/Data/system-domains.csv",
        r => r.Text("system_id"),
        TestFrom
    );

    /// <summary>All systems, in the order in which they are listed.</summary>
    internal static ImmutableArray<SystemRecord> All => Table.Rows;

    private static SystemRecord FromRow(CsvRow row) =>
        new(
            row.Text("id"),
            row.Text("name"),
            row.Institution(),
            row.Text("edition"),
            row.Choice<SystemSum>("sum"),
            row.TextOrNull("property"),
            row.TextOrNull("superseded_by"),
            row.TextOrNull("superseded_by_words"),
            row.Choice<SystemPhilosophy>("philosophy"),
            row.Number("depth_low_in"),
            row.Number("depth_high_in"),
            row.YesOrNo("organic_soils"),
            row.Text("in_words"),
            row.Sources(),
            row.Status(),
            [.. Tests.Value[row.Text("id")]]
        );

    private static AcceptedTest TestFrom(CsvRow row) =>
        new()
        {
            Nutrient = row.Choice<PlantNutrient>("nutrient"),
            Crops = row.Choices<CropRow>("crops"),
            Extractants = row.Choices<Extractant>("extractants"),
            Unit = row.Choice<SoilTestUnit>("unit"),
        };
}
