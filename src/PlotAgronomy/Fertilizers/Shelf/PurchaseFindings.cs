using System.Collections.Immutable;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Fertilizers;

/// <summary>The remarks a plan carries.</summary>
internal static class PurchaseFindings
{
    private const double PercentDust = 1e-6;

    internal static IEnumerable<Finding> Of(
        PurchaseForm form,
        Area area,
        ImmutableArray<PurchaseLine> lines,
        ImmutableArray<NutrientBalance> balances,
        NutrientConflict? conflict,
        bool isProven,
        bool isUndecided,
        decimal gap,
        FieldConditions field
    )
    {
        if (conflict is not null)
        {
            string remedy = conflict.Remedy is { } material
                ? $"adding {material} would make it fit"
                : "no single material of the catalog would make it fit";
            yield return FindingCatalog.Create(
                FertilizerCodes.NoSetFits,
                ("conflict", conflict.ToString()),
                ("missing", Missing(balances)),
                ("remedy", remedy)
            );
        }

        if (isUndecided)
        {
            yield return FindingCatalog.Create(FertilizerCodes.SearchUndecided);
        }
        else if (!isProven && conflict is null && balances.Any(b => !b.IsMet))
        {
            yield return FindingCatalog.Create(FertilizerCodes.SearchStoppedShort, ("missing", Missing(balances)));
        }
        else if (!isProven)
        {
            yield return FindingCatalog.Create(FertilizerCodes.SearchStopped, ("gap", Amounts.Print((double)gap, 2)));
        }

        foreach (var finding in RateFindings.Of(balances, field))
        {
            yield return finding;
        }

        foreach (var finding in PerAcreQuestion(area, balances).Concat(NitrogenOver(form, balances)))
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
        else
        {
            foreach (var balance in balances.Where(b => b.AtLeast > ApplicationRate.Zero && OverNeed.IsOver(b)))
            {
                yield return OverNeed.Told(balance);
            }
        }
    }

    private static string Missing(ImmutableArray<NutrientBalance> balances) =>
        string.Join(
            ", ",
            balances
                .Where(b => !b.IsMet)
                .Select(b => $"{PlantNutrients.Symbols[b.Nutrient]} {Amounts.Print(b.Missing, decimals: 1)}")
        );

    /// <summary>A large figure on more than an acre may be the field's and not the acre's.</summary>
    private static IEnumerable<Finding> PerAcreQuestion(Area area, ImmutableArray<NutrientBalance> balances)
    {
        double acres = area.Acres;
        var large = balances
            .Where(b => (int)b.Nutrient < 3 && b.AtLeast.PoundsPerAcre >= FertilizerConstants.All["per-acre-question"])
            .ToList();
        if (acres > 1 && large.Count > 0)
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.PerAcre,
                (
                    "need",
                    string.Join(
                        ", ",
                        large.Select(b => $"{PlantNutrients.Symbols[b.Nutrient]} {Amounts.Print(b.AtLeast, decimals: 1)}")
                    )
                ),
                ("area", Amounts.Print(area, decimals: 2)),
                (
                    "total",
                    string.Join(
                        ", ",
                        large.Select(b =>
                            $"{PlantNutrients.Symbols[b.Nutrient]} {Amounts.Print(b.AtLeast.Over(area), decimals: 0)}"
                        )
                    )
                )
            );
        }
    }

    /// <summary>Nitrogen above its need and without a range of its own; what emptied packages overshoot is said apart.</summary>
    private static IEnumerable<Finding> NitrogenOver(PurchaseForm form, ImmutableArray<NutrientBalance> balances)
    {
        double most =
            form == PurchaseForm.SpreadWholePackages
                ? 100 + FertilizerConstants.All["tolerance-whole-packages-over"]
                : double.PositiveInfinity;
        return balances
            .Where(b =>
                b is { Nutrient: PlantNutrient.Nitrogen, AtMost: null }
                && b.PercentOfNeed > 100 + FertilizerConstants.All["tolerance-nitrogen-over"] + PercentDust
                && b.PercentOfNeed <= most
            )
            .Select(b =>
                FindingCatalog.Create(FertilizerCodes.NitrogenOver, ("percent", Amounts.Print(b.PercentOfNeed!.Value - 100, 0)))
            );
    }

    private static IEnumerable<Finding> WholePackageFindings(Area area, ImmutableArray<NutrientBalance> balances)
    {
        double limit = FertilizerConstants.All["tolerance-whole-packages-over"];
        foreach (var balance in balances.Where(b => b.PercentOfNeed > 100 + limit))
        {
            yield return FindingCatalog.Create(
                FertilizerCodes.WholePackagesOver,
                ("nutrient", PlantNutrients.Symbols[balance.Nutrient]),
                ("percent", Amounts.Print(balance.PercentOfNeed!.Value - 100, 0)),
                ("need", Amounts.Print(balance.AtLeast, decimals: 1))
            );
        }

        double acres = area.Acres;
        if (acres < FertilizerConstants.All["small-plot"])
        {
            yield return FindingCatalog.Create(FertilizerCodes.SmallPlot, ("area", Amounts.Print(area, decimals: 3)));
        }
    }
}
