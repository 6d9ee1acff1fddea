using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Soil;

/// <summary>How to take the next soil sample of a small plot.</summary>
[JsonConverter(typeof(NotForJson))]
public sealed class SamplingAdvice : IWorkedResult
{
    private readonly SamplingRule rule = SamplingRule.ForSmallPlots;

    private SamplingAdvice() { }

    /// <summary>Gets how many composite samples to send: one for each part of its own soil or history.</summary>
    public required int Composites { get; init; }

    /// <summary>Gets the fewest cores to mix into each composite.</summary>
    public int FewestCores => rule.FewestCores!.Value;

    /// <summary>Gets the most cores that are worth the walk.</summary>
    public int MostCores => rule.MostCores!.Value;

    /// <summary>Gets the depth to sample to.</summary>
    public required Length Depth { get; init; }

    /// <summary>Gets the first day of the next sampling window, same month as before; null without an earlier sample.</summary>
    public required DateOnly? NextFrom { get; init; }

    /// <summary>Gets the last day by which to sample again; null without an earlier sample.</summary>
    public required DateOnly? NextBy { get; init; }

    /// <inheritdoc/>
    public ImmutableArray<Finding> Findings => [];

    /// <inheritdoc/>
    public ImmutableArray<Source> Sources => rule.Origin.Sources;

    /// <summary>Advice for a plot by the careful rule for small plots.</summary>
    /// <param name="parts">Parts of the plot with a soil or a history of their own; at least 1.</param>
    /// <param name="topDressedWithoutTillage">Whether it is no-till ground that is only
    /// dressed on top, such as perennial clover.</param>
    /// <param name="lastSampled">Day of the last sample, or null.</param>
    /// <param name="lastRatingWasExtreme">Whether the last report rated something very low
    /// or very high: sample again after one year.</param>
    /// <returns>The advice.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No part.</exception>
    /// <remarks>Common practice: 10 to 15 cores at tillage depth (6 in; 4 in under top-dressed stands,
    /// and say so on the form), every 2 to 3 years.</remarks>
    public static SamplingAdvice ForPlot(
        int parts,
        bool topDressedWithoutTillage,
        DateOnly? lastSampled = null,
        bool lastRatingWasExtreme = false
    )
    {
        Guard.AtLeast(parts, 1, "part");
        var rule = SamplingRule.ForSmallPlots;
        int afterExtreme = (int)SoilConstants.All["years-after-extreme-rating"];
        int from = lastRatingWasExtreme ? afterExtreme : rule.ShortestIntervalYears!.Value;
        int by = lastRatingWasExtreme ? afterExtreme : rule.LongestIntervalYears!.Value;
        return new SamplingAdvice
        {
            Composites = parts,
            Depth = topDressedWithoutTillage ? Length.FromInches(SoilConstants.All["top-dressed-depth"]) : rule.Depth!.Value,
            NextFrom = lastSampled?.AddYears(from),
            NextBy = lastSampled?.AddYears(by),
        };
    }

    /// <inheritdoc/>
    public ImmutableArray<WorkedLine> ShowWork() =>
        [
            SoilFormulas.All["sample-composites"].Line(Amounts.Print(Composites, 0)),
            SoilFormulas.All["sample-cores"].Line($"{FewestCores} to {MostCores}"),
            SoilFormulas.All["sample-depth"].Line(Amounts.Print(Depth, "in", 1)),
        ];

    /// <summary>What it comes to: the last line of its working.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => this.InWords();
}
