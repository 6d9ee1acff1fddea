using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>How far phosphate and potash may go above a need before it is told, and before a closer set is looked for (common
/// practice).</summary>
internal static class OverNeed
{
    /// <summary>The most that is near enough; null for other nutrients.</summary>
    internal static ApplicationRate? NearEnough(PlantNutrient nutrient, ApplicationRate need) =>
        nutrient is not (PlantNutrient.Phosphate or PlantNutrient.Potash) ? null
        : need <= ApplicationRate.Zero ? ApplicationRate.FromPoundsPerAcre(FertilizerConstants.All["unneeded-nutrient"])
        : ApplicationRate.FromPoundsPerAcre(
            Math.Max(
                need.PoundsPerAcre * (1 + FertilizerConstants.All["over-need"] / 100),
                need.PoundsPerAcre + FertilizerConstants.All["over-need-pounds"]
            )
        );

    internal static bool IsOver(NutrientBalance balance) =>
        balance.IsAsked
        && NearEnough(balance.Nutrient, balance.AtLeast) is { } most
        && balance.Delivered.PoundsPerAcre > most.PoundsPerAcre * (1 + 1e-9);

    /// <summary>The same need with these limits, where it states none that is lower.</summary>
    internal static PlotNeed Limited(PlotNeed need) =>
        need.With(
            need.Targets.Select(t =>
                NearEnough(t.Nutrient, t.AtLeast) is { } most && (t.AtMost is not { } stated || most < stated)
                    ? NutrientTarget.Create(t.Nutrient, t.AtLeast, most, () => t.Reason)
                    : t
            )
        );

    internal static Finding Told(NutrientBalance balance) =>
        FindingCatalog.Create(
            FertilizerCodes.OverNeed,
            ("nutrient", PlantNutrients.Symbols[balance.Nutrient]),
            ("rate", Amounts.Print(balance.Delivered, decimals: 1)),
            ("need", Amounts.Print(balance.AtLeast, decimals: 1)),
            ("harm", balance.Nutrient == PlantNutrient.Phosphate ? ", and phosphate that runs off harms water" : "")
        );
}
