namespace PlotAgronomy.Planning;

/// <summary>What to buy, in whole packages, and what it costs.</summary>
internal static class ShoppingSection
{
    internal static SheetSection Write(PlanResults results)
    {
        var plan = results.Plan;
        var sheet = new SectionWriter("shopping", "Shopping list", 'B');
        decimal total = 0;
        var rows = new List<SheetRow>();

        void Add(string item, string packages, decimal cost, params ReadOnlySpan<IWorkedResult> because)
        {
            total += cost;
            var value = new FigureValue(packages, SheetAmount.Money(cost, plan.Currency));
            rows.Add(sheet.Row(item, value, [item, packages, plan.Currency.Print(cost)], [], because));
        }

        if (results.Lime.Order is { Bags: int bags, Cost: decimal limeCost } order)
        {
            sheet.RestsOn(LimeSolver.Basis(results.Lime));
            Add(
                results.Lime.Offer!.Material.Name,
                FertilizerSection.Packages(bags, results.Lime.Offer.Bag!.Value),
                limeCost,
                order
            );
        }

        sheet.RestsOn(results.Need);
        foreach (var line in results.Fertilizer?.Lines ?? [])
        {
            Add(
                line.Product.Name,
                FertilizerSection.Packages(line.Packages, line.Product.Package),
                line.Cost,
                results.Fertilizer!
            );
        }

        sheet.RestsOn(results.Blend);
        foreach (var sown in results.Sown)
        {
            Add(
                $"{SheetText.Name(sown.Planned.Kind)}, lot {sown.Planned.Offer.Lot.Label}",
                FertilizerSection.Packages(sown.Packages, sown.Planned.Offer.Package),
                sown.Cost,
                sown.Bulk
            );
        }

        sheet.Table(["item", "packages", "cost"], rows);
        sheet.RestsOn([.. LimeSolver.Basis(results.Lime), results.Need, results.Blend]);
        sheet.Figure(
            "all together",
            new(plan.Currency.Print(total), SheetAmount.Money(total, plan.Currency)),
            PlanningFormulas
                .All["plan-shopping-total"]
                .Line($"{string.Join(" + ", rows.Select(r => r.Cells[2].Split(' ')[0]))} = {plan.Currency.Print(total)}")
        );
        return sheet.Close();
    }
}
