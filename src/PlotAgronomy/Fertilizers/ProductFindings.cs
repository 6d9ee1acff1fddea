using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>Remarks on the products themselves and how they go on.</summary>
internal static class ProductFindings
{
    internal static IEnumerable<Finding> Of(ImmutableArray<(FertilizerProduct Product, Mass Spread)> products, ImmutableArray<NutrientBalance> balances, FieldConditions field)
    {
        var substances = products.Select(p => p.Product.Substance).ToHashSet();
        bool urea = substances.Contains(FertilizerSubstance.Urea) || substances.Contains(FertilizerSubstance.UreaAmmoniumNitrateSolution);
        if (urea && field.IsIncorporated != true)
        {
            yield return FindingCatalog.Create("fertilizer-surface-urea", ("rain", Amounts.Print(FertilizerLimits.Of("urea-burying-rain"), 2)));
        }

        if (substances.Contains(FertilizerSubstance.AmmoniumNitrate))
        {
            yield return FindingCatalog.Create("fertilizer-ammonium-nitrate", ("limit", Amounts.Print(FertilizerLimits.Of("ammonium-nitrate-storage"), 0)));
        }

        foreach (var caution in MixCompatibility.Cautions(substances))
        {
            yield return caution;
        }

        bool salty = balances.Any(b => b.Nutrient is PlantNutrient.Nitrogen or PlantNutrient.Potash && b.Delivered > ApplicationRate.Zero);
        if (field.TouchesSeed && salty)
        {
            yield return FindingCatalog.Create("fertilizer-seed-contact");
        }

        if (field.TouchesSeed && balances.Any(b => b.Nutrient == PlantNutrient.Boron && b.Delivered > ApplicationRate.Zero))
        {
            yield return FindingCatalog.Create("fertilizer-boron-with-seed");
        }

        if (field.TouchesInoculatedSeed && products.Length > 0)
        {
            yield return FindingCatalog.Create("fertilizer-inoculant-contact");
        }

        if (products.Length > 0 && field.IsNearWater != false)
        {
            yield return FindingCatalog.Create("fertilizer-water-and-weather");
        }
    }
}
