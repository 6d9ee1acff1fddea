using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>A system's rating limits: low, medium, high and their kin, with every limit in sight.</summary>
/// <remarks>Get one from <see cref="RatingSystem"/>. Limits in lb/ac are for the furrow slice, twice the ppm
/// (SOIL-PA1).</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed partial class RatingSystem
{
    private readonly ImmutableArray<ImmutableArray<RatingScale>> byAnalyte;

    internal RatingSystem(CsvRow row, ImmutableArray<RatingScale> scales)
    {
        Id = row.Text("id");
        Name = row.Text("name");
        Institution = row.Institution();
        Status = row.Status();
        Property = row.TextOrNull("property");
        Scales = scales;
        byAnalyte =
        [
            .. scales
                .GroupAlike((one, other) => one.Analyte == other.Analyte)
                .Select(alike => alike.ToImmutableArray()),
        ];
    }

    /// <summary>Gets the id, such as <c>DE</c>.</summary>
    public string Id { get; }

    /// <summary>Gets the name.</summary>
    public string Name { get; }

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets the standing of its limits as a whole.</summary>
    public DataStatus Status { get; }

    /// <summary>Gets the scales, one for each nutrient, test and scope.</summary>
    public ImmutableArray<RatingScale> Scales { get; }

    /// <summary>The everyday property of this system; null where it has none.</summary>
    internal string? Property { get; }

    /// <summary>The scale that a report is rated by for one nutrient, whatever the value of its reading, or why there is none;
    /// neither where the system has no limits for it.</summary>
    internal (RatingScale? Scale, UnratedNutrient? Unrated) ScaleFor(SoilAnalyte analyte, PlotSoil soil, CropRow? crop)
    {
        foreach (var scales in byAnalyte)
        {
            if (scales[0].Analyte == analyte)
            {
                var facts = new ScaleFacts(soil, crop);
                return facts.Fitting(scales) is { } scale ? (scale, null) : (null, new UnratedNutrient(facts, scales));
            }
        }

        return default;
    }

    /// <summary>The name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;

    private static bool Holds(SoilReport report, SoilAnalyte analyte)
    {
        foreach (var reading in report.Readings)
        {
            if (reading.Analyte == analyte)
            {
                return true;
            }
        }

        return false;
    }
}
