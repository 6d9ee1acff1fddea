using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>A result that shows its working, names its sources and carries its findings.</summary>
/// <example>
/// <code>
/// var tag = SeedAnalysis.FromFractions(Fraction.FromPercent(98.5), germination: Fraction.FromPercent(78));
/// IWorkedResult seed = PureLiveSeed.BulkRate(PureLiveSeedRate.BroadcastPoundsPerAcre(20), tag, ViabilityRule.GerminationOnly);
/// foreach (WorkedLine line in seed.ShowWork())
/// {
///     Console.WriteLine(line.Label);
/// }
/// // Viable seed
/// // Pure live seed
/// // Bulk rate
/// </code>
/// </example>
[JsonConverter(typeof(NotForJson))]
public interface IWorkedResult
{
    /// <summary>Gets the remarks, most serious first.</summary>
    ImmutableArray<Finding> Findings { get; }

    /// <summary>Gets the sources of its numbers and formulas.</summary>
    ImmutableArray<Source> Sources { get; }

    /// <summary>Lays out the lines of the sum. The text is built only when asked for.</summary>
    /// <returns>The lines, in the order a person would write them.</returns>
    ImmutableArray<WorkedLine> ShowWork();
}
