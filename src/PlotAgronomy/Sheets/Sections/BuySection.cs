using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>What to buy, in whole packages, and what it costs.</summary>
internal static class BuySection
{
    internal static SheetSection Write(PlotAnswers answers, FieldPlan field)
    {
        var plan = answers.Plan;
        var lime = answers.Lime.Told;
        var seed = answers.Seed.OrNull();
        var sheet = new SectionWriter("buy", "Buy", SheetPart.Front);
        var rows = new List<SheetRow>();

        void Add(string code, string item, string packages, decimal cost, params ReadOnlySpan<IWorkedResult> because)
        {
            var value = new FigureValue(packages, SheetAmount.Money(cost, plan.Currency));
            rows.Add(sheet.Row(code, item, value, [item, packages, plan.Currency.Print(cost)], [], because));
        }

        if (lime.Order.OrNull() is { Cost: decimal cost } order)
        {
            sheet.RestsOn([.. lime.RestsOn]);
            Add("buy.lime", lime.Offer!.Item.Name, LimeSection.Bought(lime.Offer, order), cost, order);
        }

        sheet.RestsOn(answers.Need.Told);
        var purchase = answers.Fertilizer.Told.Purchase.OrNull();
        foreach (var line in purchase?.Lines ?? [])
        {
            Add(
                FigureCode.Of("buy.fertilizer", FigureCode.Word(line.Product.Name)),
                line.Product.Name,
                FertilizerSection.Packages(line.Packages, line.Offer.Package),
                line.Cost,
                purchase!
            );
        }

        foreach (var line in answers.Fertilizer.Told.Later)
        {
            Add(
                FigureCode.Of("buy.nitrogen", FigureCode.Word(line.Product.Name)),
                $"{line.Product.Name}, for the stand",
                FertilizerSection.Packages(line.Packages, line.Offer.Package),
                line.Cost,
                answers.Fertilizer.Told.LaterNitrogen.Value.Purchase.Value
            );
        }

        sheet.RestsOn(seed?.Blend);
        foreach (var sown in seed?.Kinds ?? [])
        {
            Add(
                FigureCode.Of("buy.seed", sown.Planned.Kind.Id),
                $"{SheetText.Name(sown.Planned.Kind)}, lot {sown.Planned.Offer.Item.Label}",
                FertilizerSection.Packages(sown.Packages, sown.Planned.Offer.Package),
                sown.OfPlannedLot,
                sown.Bulk
            );
            foreach (var rest in sown.FromOthers)
            {
                Add(
                    FigureCode.Of("buy.seed", sown.Planned.Kind.Id, FigureCode.Word(rest.Offer.Item.Label)),
                    $"{SheetText.Name(sown.Planned.Kind)}, lot {rest.Offer.Item.Label}",
                    FertilizerSection.Packages(rest.Packages, rest.Offer.Package),
                    rest.Cost,
                    sown.Bulk
                );
            }
        }

        if (rows.Count == 0)
        {
            sheet.Say("Nothing is bought now.");
        }

        if (lime is { Rate.State: AnswerState.Open, OrderRange: var (low, high) })
        {
            sheet.Say(
                $"Lime is not on this list: {SheetText.Weight(low.Value.Product)} to {SheetText.Weight(high.Value.Product)}, "
                    + "see there; ask first."
            );
        }

        sheet.RestsOn([.. lime.RestsOn, answers.Need.Told, seed?.Blend]);
        var total = new FigureValue(plan.Currency.Print(answers.TotalCost), SheetAmount.Money(answers.TotalCost, plan.Currency));
        string all = answers.Seed.State == AnswerState.Open ? "all together, without the seed" : "all together";
        if (rows.Count == 0)
        {
            sheet.Figure("buy.all", all, total, answers.TotalCostLine);
        }
        else
        {
            rows.Add(sheet.Row("buy.all", all, total, [all, "", total.Text], [answers.TotalCostLine]));
            sheet.Table(["item", "packages", "cost"], rows);
        }

        if (!plan.Kinds.IsEmpty)
        {
            HeldSeed.SayNotBought(sheet, answers);
        }

        sheet.Remark(field.Buying.Select(f => (Finding.SeverityWords[f.Severity], SheetText.Sentence(f))));
        return sheet.Close();
    }
}
