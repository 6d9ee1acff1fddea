namespace PlotAgronomy.Nutrients;

/// <summary>The agreed numbers of the rule for a blend's need (common practice).</summary>
internal static class BlendNeedRule
{
    internal static double CountedFromShare => NutrientConstants.All["counted-from-share"];

    internal static double LegumeNitrogenCeilingPounds => NutrientConstants.All["legume-nitrogen-ceiling"];

    /// <summary>Where the test calls for no phosphate, none may come along with another nutrient.</summary>
    internal static bool IsUnneededPhosphate(PlantNutrient nutrient, ApplicationRate need) =>
        nutrient == PlantNutrient.Phosphate && need <= ApplicationRate.Zero;

    /// <summary>Whether two rates differ enough to be worth a remark.</summary>
    internal static bool Differ(double ours, double printedLow, double printedHigh)
    {
        double gap = ours < printedLow ? printedLow - ours : Math.Max(0, ours - printedHigh);
        double nearest = ours < printedLow ? printedLow : printedHigh;
        return gap > NutrientConstants.All["printed-difference-lb"]
            && gap > NutrientConstants.All["printed-difference-pct"] / 100 * nearest;
    }
}
