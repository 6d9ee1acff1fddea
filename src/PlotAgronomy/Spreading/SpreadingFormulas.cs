using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>The formulas of this room as their publications print them.</summary>
internal static class SpreadingFormulas
{
    internal static FormulaTable All { get; } = new("Spreading/Data/formulas.csv");

    /// <summary>The place for 43,560 ft2/ac over 88 ft/min per mph, as formulas print it.</summary>
    internal static (string Place, string Value) FlowConstant => ("495", Amounts.Print(SpreaderMath.FlowConstant, 0));

    /// <summary>The place for the feet a minute of one mile an hour.</summary>
    internal static (string Place, string Value) FeetPerMinutePerMph =>
        ("88", Amounts.Print(SpreaderMath.FeetPerMinutePerMph, 0));

    /// <summary>Where the exact factors between flow, rate, pace and swath come from.</summary>
    internal static ImmutableArray<Source> UnitSources => All.SourcesOf("spread-rate-from-flow");
}
