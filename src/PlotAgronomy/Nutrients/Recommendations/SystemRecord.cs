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

    /// <summary>The printed scales of this system; empty where it prints none.</summary>
    internal ImmutableArray<RatingScale> Scales { get; } = RatingTables.Of(Id);

    /// <summary>All systems, in the order in which they are listed.</summary>
    internal static ImmutableArray<SystemRecord> All => Table.Rows;

    /// <summary>Where a reading stands on one of its scales; null above the last class.</summary>
    internal NutrientRating? RatingOn(DomainReading reading, RatingScale scale) =>
        scale.ClassOf(reading.Value) is { } found
            ? new NutrientRating
            {
                System = RatingSystem.TryFind(Id, out var printed, out _) ? printed : null,
                Scale = scale,
                Class = found,
                Reading = reading.Reading,
                ComparedValue = reading.Value,
            }
            : null;

    /// <summary>The printed scale of a test for a crop row.</summary>
    internal RatingScale PrintedScale(
        DomainReading reading,
        CropRow crop,
        ScaleCondition condition = ScaleCondition.None
    )
    {
        foreach (var scale in Scales)
        {
            if (
                scale.Analyte == reading.Reading.Analyte
                && scale.Condition == condition
                && (scale.Crops.IsEmpty || scale.Crops.Contains(crop))
                && ReportReadings.IsAccepted(reading.Reading.Extractant, scale.Extractants)
            )
            {
                return scale;
            }
        }

        throw new InvalidOperationException($"{Name} prints no scale for {reading.Words} on {CropRows.WordsFor(crop)}.");
    }

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
