using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Spreading;

/// <summary>The formulas of this room as their publications print them.</summary>
internal static class SpreadingFormulas
{
    internal static FormulaTable All { get; } = new("Spreading/Data/formulas.csv");

    /// <summary>Where the exact factors between flow, rate, pace and swath come from.</summary>
    internal static ImmutableArray<string> UnitSources => Sources("spread-rate-from-flow");

    /// <summary>Square feet in an acre, as the formulas print them.</summary>
    internal static (string Place, string Value) SquareFeetPerAcre => ("43,560", Amounts.Print(ExactUnits.SquareFeetPerAcre, 0));

    internal static ImmutableArray<string> Sources(params ReadOnlySpan<string> ids)
    {
        var sources = ImmutableArray.CreateBuilder<string>();
        foreach (string id in ids)
        {
            sources.AddRange(All[id].Origin?.SourceIds ?? []);
        }

        return [.. sources.Distinct()];
    }
}
