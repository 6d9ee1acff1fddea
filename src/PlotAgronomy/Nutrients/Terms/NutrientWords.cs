namespace PlotAgronomy.Nutrients;

/// <summary>Words of the trade for what the systems and rules ask; a plan file uses the same ones. Those of crop rows stand in
/// <see cref="CropRows"/>' table.</summary>
internal static class NutrientWords
{
    internal static EnumWords<YieldUnit> YieldUnits { get; } = EnumWords<YieldUnit>.FromNames();

    internal static EnumWords<YieldUnit> YieldsPerAcre { get; } = new((YieldUnit.Ton, "ton/ac"), (YieldUnit.Bushel, "bu/ac"));

    internal static EnumWords<SystemPhilosophy> Philosophies { get; } =
        new(
            (SystemPhilosophy.Sufficiency, "sufficiency (feed this year's crop, leave the soil as it is)"),
            (
                SystemPhilosophy.BuildUpAndMaintenance,
                "build-up and maintenance (raise the soil first, then put back what is carried off)"
            ),
            (SystemPhilosophy.YieldGoal, "a yield goal (pounds for every unit of yield hoped for)"),
            (SystemPhilosophy.CriticalLevel, "a critical level (yes or no, without a rate)"),
            (SystemPhilosophy.LegalMaximum, "a legal ceiling (no more than this)")
        );

    /// <summary>A yield's unit within a sentence, such as <c>bushels per acre</c>.</summary>
    internal static string InFull(YieldUnit unit) => $"{YieldUnits[unit]}s per acre";

    /// <summary>A figure or a range, such as <c>30 to 40</c>.</summary>
    internal static string Range(double low, double high, int decimals = 4) =>
        low < high ? $"{Amounts.Print(low, decimals)} to {Amounts.Print(high, decimals)}" : Amounts.Print(low, decimals);

    /// <summary>Pounds per acre as a figure or a range, to a tenth.</summary>
    internal static string Range(ApplicationRate low, ApplicationRate high) => Range(low.PoundsPerAcre, high.PoundsPerAcre, 1);
}
