using System.Collections.Frozen;
using System.Collections.Immutable;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>What the table says of one recommendation system.</summary>
internal sealed record SystemRecord(
    string Id,
    string Name,
    string Institution,
    string Edition,
    string? SupersededBy,
    SystemPhilosophy Philosophy,
    double DepthLowInches,
    double DepthHighInches,
    string InWords,
    ImmutableArray<string> SourceIds,
    DataStatus Status,
    ImmutableArray<AcceptedTest> Accepts
)
{
    private static readonly Lazy<FrozenDictionary<string, SystemRecord>> ById = new(Load);

    internal static SystemRecord Find(string id) => ById.Value[id];

    private static FrozenDictionary<string, SystemRecord> Load()
    {
        var tests = Table.Grouped("Nutrients/Data/system-domains.csv", r => r.Text("system"), TestFrom).Value;
        return Table
            .Read("Nutrients/Data/systems.csv", r => new SystemRecord(
                r.Text("id"),
                r.Text("name"),
                r.Text("institution"),
                r.Text("edition"),
                r.TextOrNull("superseded_by"),
                r.Choice<SystemPhilosophy>("philosophy"),
                r.Number("depth_low_in"),
                r.Number("depth_high_in"),
                r.Text("in_words"),
                [.. r.SourceId().Split(';')],
                r.Status(),
                [.. tests[r.Text("id")]]
            ))
            .ToFrozenDictionary(s => s.Id, StringComparer.Ordinal);
    }

    private static AcceptedTest TestFrom(CsvRow row) =>
        new()
        {
            Nutrient = row.Choice<PlantNutrient>("nutrient"),
            Crops = row.Choices<CropRow>("crops"),
            Extractants = row.Choices<Extractant>("extractants"),
            Unit = row.Choice<SoilTestUnit>("unit"),
        };
}
