using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>The formulas of this room as their publications print them.</summary>
internal static class SpreadingFormulas
{
    internal static FormulaTable All { get; } = new("Spreading/Data/formulas.csv");

    /// <summary>Where the exact factors between flow, rate, pace and swath come from.</summary>
    internal static ImmutableArray<string> UnitSources => All.SourcesOf("spread-rate-from-flow");
}
