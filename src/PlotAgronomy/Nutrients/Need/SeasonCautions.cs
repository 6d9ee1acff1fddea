using PlotAgronomy.Reference;

namespace PlotAgronomy.Nutrients;

/// <summary>When nitrogen and potash are spread: not all of it before the seed.</summary>
internal static class SeasonCautions
{
    internal static IEnumerable<Finding> Of(PlotNeedSum sum) =>
        [.. Dressings(sum), .. Potash(sum), .. sum.Components.Where(c => c.Counts).SelectMany(c => OwnNitrogen(sum.Request, c))];

    /// <summary>Whether the soil holds so little that potash is given in two halves.</summary>
    internal static double? CapacityThatLeaches(PlotNeedSum sum) =>
        (sum.Request.Soil.CapacityPer100Grams ?? sum.Request.Soil.ExchangeCapacity?.Milliequivalents) is { } capacity
        && capacity <= NutrientConstants.All["potash-split-cec"]
        && sum.Used.FirstOrDefault(t => t.Nutrient == PlantNutrient.Potash) is { } target
        && target.AtLeast > ApplicationRate.Zero
        && !PurchaseFloor.IsBelow(target)
            ? capacity
            : null;

    private static IEnumerable<Finding> Dressings(PlotNeedSum sum)
    {
        if (
            sum.NitrogenTarget is not { } target
            || target.AtLeast <= ApplicationRate.Zero
            || sum.IsTooLittle(target)
            || sum.NitrogenDoses.All(d => d.Time == DressingTime.AtSowing)
        )
        {
            yield break;
        }

        var atSowing = sum.NitrogenDoses.Where(d => d.Time == DressingTime.AtSowing).ToList();
        yield return FindingCatalog.Create(
            NutrientCodes.NitrogenDressings,
            (
                "doses",
                string.Join(", then ", sum.NitrogenDoses.Select(d => $"{NutrientWords.Range(d.Low, d.High)} lb/ac {d.When}"))
            ),
            ("before", atSowing.Count == 0 ? "none of it" : $"{NutrientWords.Range(atSowing[0].Low, atSowing[0].High)} lb/ac")
        );
    }

    private static IEnumerable<Finding> Potash(PlotNeedSum sum)
    {
        if (CapacityThatLeaches(sum) is { } capacity)
        {
            double pounds = sum.Used.First(t => t.Nutrient == PlantNutrient.Potash).AtLeast.PoundsPerAcre;
            yield return FindingCatalog.Create(
                NutrientCodes.PotashSplit,
                ("cec", Amounts.Print(capacity, 1)),
                ("half", Amounts.Print(pounds / 2, 0))
            );
        }
    }

    /// <summary>The system's own nitrogen for the row, where another rule was used and says much else.</summary>
    private static IEnumerable<Finding> OwnNitrogen(PlotNeedRequest request, ComponentNeed component)
    {
        if (
            !component.Component.Kind.IsLegume
            && request.Printed?.Find(PlantNutrient.Nitrogen) is null
            && ComponentNeeds.UseOf(request, component.Component.Kind).Nitrogen is null
            && component.PhosphateAnswer?.For(PlantNutrient.Nitrogen) is { } printed
            && component is { Nitrogen: { Low: { } low, High: { } high }, PhosphateRow: { } row }
            && BlendNeedRule.Differ(printed.Rate.PoundsPerAcre, low.PoundsPerAcre, high.PoundsPerAcre)
        )
        {
            yield return FindingCatalog.Create(
                NutrientCodes.NitrogenDiffers,
                ("system", request.System!.Name),
                ("printed", Amounts.Print(printed.Rate.PoundsPerAcre, 1)),
                ("row", CropRows.WordsFor(row)),
                ("rule", component.Nitrogen.Rule.Title),
                ("ours", NutrientWords.Range(low, high)),
                ("kind", component.Component.Kind.ShortName)
            );
        }
    }
}
