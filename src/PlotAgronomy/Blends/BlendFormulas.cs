using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Blends;

/// <summary>The formulas of this room as their publications print them.</summary>
internal static class BlendFormulas
{
    internal static FormulaTable All { get; } = new("Blends/Data/formulas.csv");

    /// <summary>Where the share of a full stand is printed.</summary>
    internal static ImmutableArray<Source> ShareSources => All["blend-share-of-full-stand"].Origin!.Sources;

    /// <summary>A sum over the kinds, told with its parts.</summary>
    internal static WorkedLine Sum(string what, string partsAndSum) =>
        All["blend-sum-over-kinds"].Line(partsAndSum, ("what", what));
}
