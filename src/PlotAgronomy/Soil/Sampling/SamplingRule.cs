using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>What one institution says about taking soil samples. What it does not say is null.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SamplingRule
{
    private static readonly Table<SamplingRule> Table = new("Soil/Data/sampling.csv", row => new SamplingRule(row));

    private readonly double? depthInches;
    private readonly double? largestAcres;

    private SamplingRule(CsvRow row)
    {
        Id = row.Text("id");
        Title = row.Text("title");
        Institution = row.Institution();
        FewestCores = Whole(row, "cores_low");
        MostCores = Whole(row, "cores_high");
        depthInches = row.NumberOrNull("depth_in");
        largestAcres = row.NumberOrNull("area_high_ac");
        ShortestIntervalYears = Whole(row, "interval_low_years");
        LongestIntervalYears = Whole(row, "interval_high_years");
        Note = row.TextOrNull("note");
        Origin = row.Origin();
    }

    /// <summary>Gets every rule known.</summary>
    public static ImmutableArray<SamplingRule> All => Table.Rows;

    /// <summary>Gets the institution.</summary>
    public Institution Institution { get; }

    /// <summary>Gets whose advice it is, as its publication says.</summary>
    public string Title { get; }

    /// <summary>Gets the fewest cores in one composite sample.</summary>
    public int? FewestCores { get; }

    /// <summary>Gets the most cores asked for.</summary>
    public int? MostCores { get; }

    /// <summary>Gets the depth to sample to.</summary>
    public Length? Depth => depthInches is { } inches ? Length.FromInches(inches) : null;

    /// <summary>Gets the largest area one composite may stand for.</summary>
    public Area? LargestArea => largestAcres is { } acres ? Area.FromAcres(acres) : null;

    /// <summary>Gets the shortest time between samples, in years.</summary>
    public int? ShortestIntervalYears { get; }

    /// <summary>Gets the longest time between samples, in years.</summary>
    public int? LongestIntervalYears { get; }

    /// <summary>Gets a note of the institution.</summary>
    public string? Note { get; }

    internal string Id { get; }

    /// <summary>Gets where it stands and how well that is known.</summary>
    public Origin Origin { get; }

    internal static SamplingRule ForSmallPlots => All.Single(r => r.Id == "small-plot");

    private static int? Whole(CsvRow row, string column) => row.TextOrNull(column) is null ? null : row.Integer(column);

    /// <summary>What it is, in a few words.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => Title;
}
