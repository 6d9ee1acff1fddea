using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>The remarks a plan carries.</summary>
internal static class PlanFindings
{
    internal static IEnumerable<Finding> Of(PurchaseForm form, Area area, ImmutableArray<PurchaseLine> lines, ImmutableArray<NutrientBalance> balances,
        NutrientConflict? conflict, bool isProven, decimal gap, FieldConditions field)
    {
        if (conflict is not null)
        {
            string missing = string.Join(", ", balances.Where(b => !b.IsMet).Select(b => $"{NutrientSymbols.Of(b.Nutrient)} {Amounts.Print(b.Missing, decimals: 1)}"));
            string remedy = conflict.Remedy is { } material ? $"adding {material} would make it fit" : "no single material of the catalog would make it fit";
            yield return FindingCatalog.Create("fertilizer-no-set-fits", ("conflict", conflict.ToString()), ("missing", missing), ("remedy", remedy));
        }

        if (!isProven)
        {
            yield return FindingCatalog.Create("fertilizer-search-stopped", ("gap", Amounts.Print((double)gap, 2)));
        }

        foreach (var finding in RateFindings.Of(balances, field))
        {
            yield return finding;
        }

        foreach (var finding in ProductFindings.Of([.. lines.Select(l => (l.Product, l.Spread))], balances, field))
        {
            yield return finding;
        }

        if (form == PurchaseForm.SpreadWholePackages)
        {
            foreach (var finding in WholePackageFindings(area, balances))
            {
                yield return finding;
            }
        }
    }

    private static IEnumerable<Finding> WholePackageFindings(Area area, ImmutableArray<NutrientBalance> balances)
    {
        double limit = FertilizerLimits.Of("tolerance-whole-packages-over");
        foreach (var balance in balances.Where(b => b.PercentOfNeed > 100 + limit))
        {
            yield return FindingCatalog.Create("fertilizer-whole-packages-over", ("nutrient", NutrientSymbols.Of(balance.Nutrient)),
                ("percent", Amounts.Print(balance.PercentOfNeed!.Value - 100, 0)), ("need", Amounts.Print(balance.AtLeast, decimals: 1)));
        }

        double acres = area.Acres;
        if (acres < FertilizerLimits.Of("small-plot"))
        {
            yield return FindingCatalog.Create("fertilizer-small-plot", ("area", Amounts.Print(area, decimals: 3)));
        }
    }
}
