using System.Collections.Immutable;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Fertilizers;

/// <summary>Remarks on how much of each nutrient goes on, whatever product brings it.</summary>
internal static class RateFindings
{
    private static readonly (PlantNutrient Nutrient, string Limit)[] Sane =
    [
        (PlantNutrient.Nitrogen, "sane-nitrogen"),
        (PlantNutrient.Phosphate, "sane-phosphate"),
        (PlantNutrient.Potash, "sane-potash"),
    ];

    internal static IEnumerable<Finding> Of(ImmutableArray<NutrientBalance> balances, FieldConditions field)
    {
        foreach (var balance in balances)
        {
            foreach (var finding in Of(balance, field))
            {
                yield return finding;
            }
        }

        if (!field.HasSoilTest)
        {
            yield return FindingCatalog.Create(FertilizerCodes.NoSoilTest);
        }
    }

    private static IEnumerable<Finding> Of(NutrientBalance balance, FieldConditions field)
    {
        string symbol = PlantNutrients.Symbols[balance.Nutrient],
            rate = Amounts.Print(balance.Delivered, decimals: 1);
        double pounds = Math.Max(balance.Delivered.PoundsPerAcre, balance.AtLeast.PoundsPerAcre);
        foreach (var (nutrient, limit) in Sane)
        {
            if (balance.Nutrient == nutrient && pounds >= FertilizerConstants.All[limit])
            {
                yield return FindingCatalog.Create(
                    FertilizerCodes.RateHigh,
                    ("nutrient", symbol),
                    ("rate", Amounts.Print(pounds, 1)),
                    ("limit", Amounts.Print(FertilizerConstants.All[limit], 0))
                );
            }
        }

        if (balance.Nutrient == PlantNutrient.Nitrogen && pounds >= FertilizerConstants.All["split-nitrogen"])
        {
            yield return FindingCatalog.Create(FertilizerCodes.SplitNitrogen, ("rate", Amounts.Print(pounds, 1)));
        }

        if (balance.Nutrient == PlantNutrient.Nitrogen && field.IsLegumeStand == true && balance.Delivered > ApplicationRate.Zero)
        {
            yield return FindingCatalog.Create(FertilizerCodes.NitrogenOnLegume, ("rate", rate));
        }

        if (!balance.IsAsked && field.NotKnown.Contains(balance.Nutrient) && balance.Delivered > ApplicationRate.Zero)
        {
            yield return FindingCatalog.Create(FertilizerCodes.NeedNotKnown, ("nutrient", symbol), ("rate", rate));
            yield break;
        }

        bool unneeded = balance.AtLeast.PoundsPerAcre <= 0 && balance.Delivered.PoundsPerAcre > 0;
        if (balance.Nutrient == PlantNutrient.Phosphate && unneeded)
        {
            yield return FindingCatalog.Create(FertilizerCodes.PhosphateUnneeded, ("rate", rate));
        }

        if (
            unneeded
            && (int)balance.Nutrient < 3
            && balance.Delivered.PoundsPerAcre > FertilizerConstants.All["unneeded-nutrient"]
        )
        {
            yield return balance.Nutrient == PlantNutrient.Nitrogen
            && field.SeasonNitrogen is { } season
            && balance.Delivered <= season
                ? FindingCatalog.Create(
                    FertilizerCodes.NitrogenAlong,
                    ("rate", rate),
                    ("need", Amounts.Print(season, decimals: 1))
                )
                : FindingCatalog.Create(FertilizerCodes.Unneeded, ("nutrient", symbol), ("rate", rate));
        }

        if (balance.Nutrient == PlantNutrient.Boron && balance.Delivered.PoundsPerAcre > FertilizerConstants.All["boron-hard"])
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.BoronToxic,
                ("rate", rate),
                ("limit", Amounts.Print(FertilizerConstants.All["boron-hard"], 1))
            );
        }
        else if (balance.Nutrient == PlantNutrient.Boron && balance.Delivered.PoundsPerAcre > 0)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.BoronNarrow,
                ("rate", Amounts.Print(balance.Delivered, decimals: 2))
            );
        }
    }
}
