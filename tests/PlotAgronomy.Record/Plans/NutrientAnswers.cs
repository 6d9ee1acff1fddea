using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Record.Plans;

/// <summary>What a plan needs in nutrients and what is bought for it.</summary>
internal static class NutrientAnswers
{
    internal static void Record(Action<string, object?> add, PlotAnswers answers)
    {
        foreach (var target in answers.Need.Told.Targets)
        {
            add($"need.{Symbol(target.Nutrient)}", target.AtLeast);
            add($"need.{Symbol(target.Nutrient)}.most", target.AtMost);
        }

        foreach (var target in answers.Need.Told.Computed)
        {
            add($"need.computed.{Symbol(target.Nutrient)}", target.AtLeast);
        }

        foreach (var component in answers.Need.Told.Components)
        {
            string kind = $"need.of.{component.Component.Kind.Id}";
            add($"{kind}.P2O5", component.Phosphate?.Rate);
            add($"{kind}.K2O", component.Potash?.Rate);
            add($"{kind}.counts", component.Counts);
        }

        for (int i = 0; i < answers.Need.Told.NitrogenDoses.Length; i++)
        {
            add($"{PlanAnswers.At("dose", i)}.low", answers.Need.Told.NitrogenDoses[i].Low);
            add($"{PlanAnswers.At("dose", i)}.high", answers.Need.Told.NitrogenDoses[i].High);
        }

        if (answers.Fertilizer.Told.Purchase.OrNull() is { } purchase)
        {
            Purchase(add, purchase);
        }

        for (int i = 0; i < answers.Fertilizer.Told.Others.Length; i++)
        {
            var plan = answers.Fertilizer.Told.Others[i].Purchase;
            string at = PlanAnswers.At("alternative", i);
            add($"{at}.cost", plan.TotalCost);
            add($"{at}.products", string.Join("; ", plan.Lines.Select(l => l.Product.Name)));
        }
    }

    private static void Purchase(Action<string, object?> add, Purchase purchase)
    {
        for (int i = 0; i < purchase.Lines.Length; i++)
        {
            var line = purchase.Lines[i];
            string at = PlanAnswers.At("purchase", i);
            add($"{at}.product", line.Product.Name);
            add($"{at}.packages", line.Packages);
            add($"{at}.spread", line.Spread);
            add($"{at}.rate", line.Rate);
            add($"{at}.left", line.Leftover);
            add($"{at}.cost", line.Cost);
        }

        foreach (var balance in purchase.Balances)
        {
            add($"given.{Symbol(balance.Nutrient)}", balance.Delivered);
        }

        foreach (var marginal in purchase.MarginalCosts)
        {
            add($"marginal.{Symbol(marginal.Nutrient)}", marginal.PerPoundNeeded);
            add($"marginal.{Symbol(marginal.Nutrient)}.cap", marginal.PerPoundOfCap);
        }

        add("purchase.cost", purchase.TotalCost);
        add("purchase.met", purchase.MeetsEveryNeed);
        add("purchase.proven", purchase.IsProvenCheapest);
        add("purchase.gap", purchase.ProvenGap);
        add("purchase.conflict", purchase.Conflict is { } conflict
            ? string.Join(' ', conflict.Needs.Concat(conflict.Caps).Select(Symbol)) : null);
    }

    private static string Symbol(PlantNutrient nutrient) => nutrient switch
    {
        PlantNutrient.Nitrogen => "N",
        PlantNutrient.Phosphate => "P2O5",
        PlantNutrient.Potash => "K2O",
        _ => nutrient.ToString(),
    };
}
