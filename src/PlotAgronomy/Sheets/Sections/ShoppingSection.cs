using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>What to buy, in whole packages, and what it costs.</summary>
internal static class ShoppingSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var lime = answers.Lime.Told;
        var seed = answers.Seed.Value;
        var sheet = new SectionWriter("Shopping list", 'B');
        var rows = new List<SheetRow>();

        void Add(string item, string packages, decimal cost, params ReadOnlySpan<IWorkedResult> because) =>
            rows.Add(sheet.Row(item, packages, [item, packages, plan.Currency.Print(cost)], [], because));

        if (lime.Order.OrNull() is { Cost: decimal cost } order)
        {
            sheet.RestsOn([.. lime.RestsOn]);
            Add(lime.Offer!.Material.Name, LimeSection.Bought(lime.Offer, order), cost, order);
        }

        sheet.RestsOn(answers.Need.Told);
        var purchase = answers.Fertilizer.Told.Purchase.OrNull();
        foreach (var line in purchase?.Lines ?? [])
        {
            Add(line.Product.Name, FertilizerSection.Packages(line.Packages, line.Product.Package), line.Cost, purchase!);
        }

        sheet.RestsOn(seed.Blend);
        foreach (var sown in seed.Kinds)
        {
            Add(
                $"{SheetText.Name(sown.Planned.Kind)}, lot {sown.Planned.Offer.Lot.Label}",
                FertilizerSection.Packages(sown.Packages, sown.Planned.Offer.Package),
                sown.Cost,
                sown.Bulk
            );
        }

        sheet.Table(["item", "packages", "cost"], rows);
        sheet.RestsOn([.. lime.RestsOn, answers.Need.Told, seed.Blend]);
        sheet.Figure("all together", plan.Currency.Print(answers.TotalCost), answers.TotalCostLine);
        return sheet.Close();
    }
}
