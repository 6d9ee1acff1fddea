using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Nutrients;

/// <summary>A need so small that neither the bag nor the walk pays (common practice). It is counted by the acre, so that a tiny
/// plot with a real need is served.</summary>
internal static class PurchaseFloor
{
    /// <summary>Least pounds an acre that are bought; 0 where there is no floor.</summary>
    internal static double PoundsOf(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => NutrientConstants.All["purchase-floor-nitrogen"],
            PlantNutrient.Phosphate => NutrientConstants.All["purchase-floor-phosphate"],
            PlantNutrient.Potash => NutrientConstants.All["purchase-floor-potash"],
            _ => 0,
        };

    internal static bool IsBelow(NutrientTarget target) =>
        target.AtLeast > ApplicationRate.Zero && target.AtLeast.PoundsPerAcre < PoundsOf(target.Nutrient);

    /// <summary>Nothing is bought for it; what may come along with another nutrient is no more than before, and of nitrogen and
    /// phosphate no more than the floor.</summary>
    internal static NutrientTarget Without(NutrientTarget target) =>
        NutrientTarget.Create(
            target.Nutrient,
            ApplicationRate.Zero,
            target.AtMost
                ?? (
                    target.Nutrient == PlantNutrient.Potash ? null : ApplicationRate.FromPoundsPerAcre(PoundsOf(target.Nutrient))
                ),
            () => target.Reason
        );

    internal static Finding Told(NutrientTarget target) =>
        FindingCatalog.Create(
            NutrientCodes.BelowPurchaseFloor,
            ("nutrient", SoilWords.For(target.Nutrient)),
            ("rate", Amounts.Print(target.AtLeast.PoundsPerAcre, 1)),
            ("floor", Amounts.Print(PoundsOf(target.Nutrient), 0))
        );
}
