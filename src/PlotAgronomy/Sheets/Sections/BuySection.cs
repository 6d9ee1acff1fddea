using PlotAgronomy.Fertilizers;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using UnitsNet;

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
        var list = new ShoppingRows(sheet, plan);
        if (lime.Order.OrNull() is { Cost: decimal cost } order)
        {
            sheet.RestsOn([.. lime.RestsOn]);
            list.Add(
                "buy.lime",
                lime.Offer!.Item.Name,
                Line(lime.Offer, order.Product, SheetText.Bought(order), cost),
                order
            );
        }

        sheet.RestsOn(answers.Need.Told);
        var purchase = answers.Fertilizer.Told.Purchase.OrNull();
        foreach (var line in purchase?.Lines ?? [])
        {
            list.Add(
                FigureCode.Of("buy.fertilizer", FigureCode.Word(line.Product.Name)),
                line.Product.Name,
                Line(line),
                purchase!
            );
        }

        foreach (var line in answers.Fertilizer.Told.Later)
        {
            list.Add(
                FigureCode.Of("buy.nitrogen", FigureCode.Word(line.Product.Name)),
                $"{line.Product.Name}, for the stand",
                Line(line),
                answers.Fertilizer.Told.LaterNitrogen.Value.Purchase.Value
            );
        }

        sheet.RestsOn(seed?.Blend);
        foreach (var sown in seed?.Kinds ?? [])
        {
            var offer = sown.Planned.Offer;
            list.Add(
                FigureCode.Of("buy.seed", sown.Planned.Kind.Id),
                SheetText.Name(offer.Item),
                Line(offer, sown.OfPlanned, SheetText.Packages(sown.Packages, offer.Package), sown.OfPlannedLot),
                sown.Bulk
            );
            foreach (var rest in sown.FromOthers)
            {
                list.Add(
                    FigureCode.Of("buy.seed", sown.Planned.Kind.Id, FigureCode.Word(rest.Offer.Item.Label)),
                    SheetText.Name(rest.Offer.Item),
                    Line(rest.Offer, rest.Weight, SheetText.Packages(rest.Packages, rest.Offer.Package), rest.Cost),
                    sown.Bulk
                );
            }
        }

        if (list.IsEmpty)
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
        if (list.IsEmpty)
        {
            sheet.Figure("buy.all", all, total, answers.TotalCostLine);
        }
        else
        {
            list.Close(all, total, answers.TotalCostLine);
        }

        if (!plan.Kinds.IsEmpty)
        {
            HeldSeed.SayNotBought(sheet, answers);
        }

        if (answers.Fertilizer.Told.LaterNitrogen.TryGet(out var later) && later.Purchase.State == AnswerState.NoneNeeded)
        {
            string doses = string.Join(", then ", later.Doses.Select(d => $"{FertilizerSection.Dose(d)} {d.When}"));
            sheet.Say($"Not bought: nitrogen for the stand, {doses}; too little for a bag of its own.");
        }

        sheet.Remark(field.Buying.Select(f => (Finding.SeverityWords[f.Severity], SheetText.Sentence(f))));
        return sheet.Close();
    }

    private static ShoppingLine Line(PurchaseLine line) =>
        Line(line.Offer, line.Spread, SheetText.Packages(line.Packages, line.Offer.Package), line.Cost);

    private static ShoppingLine Line<T>(Offer<T> offer, Mass taken, string packages, decimal cost)
        where T : class => new(offer.IsThere ? SheetText.Weight(taken) : null, packages, cost);
}
