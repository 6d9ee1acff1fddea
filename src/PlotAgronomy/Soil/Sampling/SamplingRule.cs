using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>What one institution says about taking soil samples. What it does not say is null.</summary>
public sealed class SamplingRule
{
    private static readonly Lazy<ImmutableArray<SamplingRule>> Table = new(() =>
        [
            .. CsvTable
                .Embedded(
                    "Soil/Data/sampling.csv",
                    "id",
                    "institution",
                    "cores_low",
                    "cores_high",
                    "depth_low_in",
                    "depth_high_in",
                    "area_high_ac",
                    "interval_low_years",
                    "interval_high_years",
                    "note",
                    "source_id",
                    "locator",
                    "status"
                )
                .Rows.Select(r => new SamplingRule(r)),
        ]
    );

    private readonly double? deepestInches;
    private readonly double? largestAcres;

    private SamplingRule(CsvRow row)
    {
        Id = row.Text("id");
        Institution = row.Text("institution");
        FewestCores = row.NumberOrNull("cores_low") is null ? null : row.Integer("cores_low");
        MostCores = row.NumberOrNull("cores_high") is null ? null : row.Integer("cores_high");
        deepestInches = row.NumberOrNull("depth_high_in");
        largestAcres = row.NumberOrNull("area_high_ac");
        ShortestIntervalYears = row.NumberOrNull("interval_low_years") is null ? null : row.Integer("interval_low_years");
        LongestIntervalYears = row.NumberOrNull("interval_high_years") is null ? null : row.Integer("interval_high_years");
        Note = row.TextOrNull("note");
        SourceId = row.SourceId();
    }

    /// <summary>Gets every rule known.</summary>
    public static ImmutableArray<SamplingRule> All => Table.Value;

    /// <summary>Gets the institution.</summary>
    public string Institution { get; }

    /// <summary>Gets the fewest cores in one composite sample.</summary>
    public int? FewestCores { get; }

    /// <summary>Gets the most cores asked for.</summary>
    public int? MostCores { get; }

    /// <summary>Gets the depth to sample to.</summary>
    public Length? Depth => deepestInches is { } inches ? Length.FromInches(inches) : null;

    /// <summary>Gets the largest area one composite may stand for.</summary>
    public Area? LargestArea => largestAcres is { } acres ? Area.FromAcres(acres) : null;

    /// <summary>Gets the shortest time between samples, in years.</summary>
    public int? ShortestIntervalYears { get; }

    /// <summary>Gets the longest time between samples, in years.</summary>
    public int? LongestIntervalYears { get; }

    /// <summary>Gets a note of the institution.</summary>
    public string? Note { get; }

    /// <summary>Gets the id of the source.</summary>
    public string SourceId { get; }

    internal string Id { get; }

    internal static SamplingRule ForSmallPlots => All.Single(r => r.Id == "small-plot");
}
