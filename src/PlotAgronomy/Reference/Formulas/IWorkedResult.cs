using System.Collections.Immutable;

namespace PlotAgronomy;

/// <summary>A result that shows its working, names its sources and carries its findings.</summary>
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
