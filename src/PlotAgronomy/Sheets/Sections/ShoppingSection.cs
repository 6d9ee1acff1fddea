namespace PlotAgronomy.Sheets;

/// <summary>What to buy, in whole packages, and what it costs.</summary>
internal static class ShoppingSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var sheet = new SectionWriter("shopping", "Shopping list");
        var rows = new List<SheetRow>();

        void Add(string code, string item, string packages, decimal cost, params ReadOnlySpan<IWorkedResult> because)
        {
            var value = new FigureValue(packages, SheetAmount.Money(cost, plan.Currency));
            rows.Add(sheet.Row(code, item, value, [item, packages, plan.Currency.Print(cost)], [], because));
        }

        if (answers.Lime.Order is { Cost: decimal cost } order)
        {
            sheet.RestsOn([.. answers.Lime.RestsOn]);
            Add("buy.lime", answers.Lime.Offer!.Item.Name, LimeSection.Bought(answers.Lime.Offer, order), cost, order);
        }

        sheet.RestsOn(answers.Need);
        foreach (var line in answers.Fertilizer.Purchase?.Lines ?? [])
        {
            Add(
                FigureCode.Of("buy.fertilizer", FigureCode.Word(line.Product.Name)),
                line.Product.Name,
                FertilizerSection.Packages(line.Packages, line.Offer.Package),
                line.Cost,
                answers.Fertilizer.Purchase!
            );
        }

        sheet.RestsOn(answers.Seed.Blend);
        foreach (var sown in answers.Seed.Kinds)
        {
            Add(
                FigureCode.Of("buy.seed", sown.Planned.Kind.Id),
                $"{SheetText.Name(sown.Planned.Kind)}, lot {sown.Planned.Offer.Item.Label}",
                FertilizerSection.Packages(sown.Packages, sown.Planned.Offer.Package),
                sown.Cost,
                sown.Bulk
            );
        }

        sheet.Table(["item", "packages", "cost"], rows);
        sheet.RestsOn([.. answers.Lime.RestsOn, answers.Need, answers.Seed.Blend]);
        var total = new FigureValue(plan.Currency.Print(answers.TotalCost), SheetAmount.Money(answers.TotalCost, plan.Currency));
        sheet.Figure("buy.all", "all together", total, answers.TotalCostLine);
        return sheet.Close();
    }
}
