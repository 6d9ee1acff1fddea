namespace PlotAgronomy.Fertilizers;

/// <summary>What a label is silent about and its compound holds all the same.</summary>
internal static class LabelCompletion
{
    /// <summary>The label, and what its compound must hold besides although the label is silent: the chlorine of potassium
    /// chloride, the sulfur of the sulfates. As pure as the first of N, P2O5 and K2O on the label says; a figure of the label is
    /// kept.</summary>
    internal static FertilizerAnalysis Completed(FertilizerAnalysis label, FertilizerSubstance substance)
    {
        if (
            CompoundCeilings.PureCompound(substance) is not { } pure
            || label.Holds.IsEmpty
            || CompoundCeilings.PercentOrZero(label.Holds[0], pure) is not (> 0 and var leading)
        )
        {
            return label;
        }

        double purity = label.Percent(label.Holds[0]) / leading;
        return Enum.GetValues<PlantNutrient>()
            .Where(n => label.Percent(n) <= 0 && CompoundCeilings.PercentOrZero(n, pure) > 0)
            .Aggregate(label, (completed, nutrient) =>
                completed.With(nutrient, purity * CompoundCeilings.Percent(nutrient, pure))
            );
    }
}
