using System.Collections.Frozen;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>The agreed numbers of the rule for a blend's need (common practice).</summary>
internal static class BlendNeedRule
{
    private static readonly Lazy<FrozenDictionary<string, double>> Values = new(() =>
        CsvTable
            .Embedded("Nutrients/Data/blend-rule.csv", "id", "value", "unit", "source_id", "locator", "status")
            .Rows.ToFrozenDictionary(r => r.Text("id"), r => r.Number("value"), StringComparer.Ordinal)
    );

    internal static double CountedFromShare => Values.Value["counted_from_share"];

    internal static double LegumeNitrogenCeilingPounds => Values.Value["legume_nitrogen_ceiling"];

    /// <summary>Whether two rates differ enough to be worth a remark.</summary>
    internal static bool Differ(double ours, double printedLow, double printedHigh)
    {
        double gap = ours < printedLow ? printedLow - ours : Math.Max(0, ours - printedHigh);
        double nearest = ours < printedLow ? printedLow : printedHigh;
        return gap > Values.Value["printed_difference_lb"] && gap > Values.Value["printed_difference_percent"] / 100 * nearest;
    }
}
