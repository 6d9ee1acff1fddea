using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>Remarks on the products themselves and how they go on.</summary>
internal static class ProductFindings
{
    internal static IEnumerable<Finding> Of(
        ImmutableArray<(FertilizerProduct Product, Mass Spread)> products,
        ImmutableArray<NutrientBalance> balances,
        FieldConditions field
    )
    {
        var substances = products.Select(p => p.Product.Substance).ToHashSet();
        bool touchesSeed = field.TouchesSeed || field.SeedRowLimit is not null;
        bool urea =
            substances.Contains(FertilizerSubstance.Urea) || substances.Contains(FertilizerSubstance.UreaAmmoniumNitrateSolution);
        if (urea && field.IsIncorporated != true)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.SurfaceUrea,
                ("rain", Amounts.Print(FertilizerConstants.All["urea-burying-rain"], 2))
            );
        }

        if (
            urea
            && field is { IsIncorporated: not true, SoilTemperature: { } temperature }
            && UreaLoss.PlanningLoss(temperature, field.Soil?.WaterPh?.Value ?? FertilizerConstants.All["unknown-ph"]) is { } loss
        )
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.SurfaceUreaLoss,
                ("loss", loss.ToString()),
                ("temperature", Amounts.Print(temperature.DegreesFahrenheit, 0))
            );
            if (UreaLoss.WorstMeasured(temperature) is { } trial && trial.LostOfApplied.High > loss.High)
            {
                yield return FindingCatalog.Create(
                    FertilizerCodes.SurfaceUreaMeasured,
                    ("measured", Amounts.Print(trial.LostOfApplied.High, 1)),
                    ("conditions", trial.Conditions),
                    ("loss", loss.ToString()),
                    ("temperature", Amounts.Print(temperature.DegreesFahrenheit, 0))
                );
            }
        }

        foreach (var (product, _) in products)
        {
            double sum = FertilizerMaterial.PrimarySum(product.Analysis);
            if (sum > 0 && sum <= FertilizerConstants.All["analysis-share"])
            {
                yield return FindingCatalog.Create(
                    FertilizerCodes.AnalysisShare,
                    ("product", product.ToString()),
                    ("sum", Amounts.Print(sum, 4))
                );
            }
        }

        if (substances.Contains(FertilizerSubstance.AmmoniumNitrate))
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.AmmoniumNitrate,
                ("limit", Amounts.Print(FertilizerConstants.All["ammonium-nitrate-storage"], 0))
            );
        }

        foreach (var caution in MixCompatibility.Cautions(substances))
        {
            yield return caution;
        }

        foreach (var caution in ChlorineUnstated(products, balances))
        {
            yield return caution;
        }

        bool salty = balances.Any(b =>
            b.Nutrient is PlantNutrient.Nitrogen or PlantNutrient.Potash && b.Delivered > ApplicationRate.Zero
        );
        if (touchesSeed && salty)
        {
            yield return FindingCatalog.Create(FertilizerCodes.SeedContact);
        }

        if (touchesSeed && balances.Any(b => b.Nutrient == PlantNutrient.Boron && b.Delivered > ApplicationRate.Zero))
        {
            yield return FindingCatalog.Create(FertilizerCodes.BoronWithSeed);
        }

        if (field.TouchesInoculatedSeed && products.Length > 0)
        {
            yield return FindingCatalog.Create(FertilizerCodes.InoculantContact);
        }

        if (products.Length > 0 && field.IsNearWater != false)
        {
            yield return FindingCatalog.Create(FertilizerCodes.WaterAndWeather);
        }
    }

    /// <summary>The chlorine of a mixed grade is not known from its label; that of potassium chloride is counted.</summary>
    private static IEnumerable<Finding> ChlorineUnstated(
        ImmutableArray<(FertilizerProduct Product, Mass Spread)> products,
        ImmutableArray<NutrientBalance> balances
    )
    {
        if (balances.FirstOrDefault(b => b is { Nutrient: PlantNutrient.Chlorine, AtMost: not null }) is not { } limited)
        {
            yield break;
        }

        double perPotash =
            ChemicalConversion.ExactFactor(ChemicalForm.PotassiumChloride, ChemicalForm.Chlorine)
            / ChemicalConversion.ExactFactor(ChemicalForm.PotassiumChloride, ChemicalForm.Potash);
        foreach (var (product, _) in products)
        {
            if (
                product.Substance == FertilizerSubstance.Mixture
                && product.Analysis.Percent(PlantNutrient.Potash) > 0
                && product.Analysis.Percent(PlantNutrient.Chlorine) <= 0
            )
            {
                yield return FindingCatalog.Create(
                    FertilizerCodes.ChlorineUnstated,
                    ("product", product.ToString()),
                    ("factor", Amounts.Print(perPotash, 2)),
                    ("limit", Amounts.Print(limited.AtMost!.Value, decimals: 1))
                );
            }
        }
    }
}
