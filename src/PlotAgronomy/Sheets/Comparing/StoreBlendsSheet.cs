using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>A store's blend beside the nearest blend from plain lots.</summary>
internal static class StoreBlendsSheet
{
    internal static FieldSheet Write(StoreBlendsForPlan compared) =>
        SheetEnding.Close(
            $"{compared.Plan.Plot.Name}: bag or plain seed",
            [.. compared.Blends.SelectMany(b => new[] { Bag(compared.Plan, b), Plain(compared.Plan, b) })],
            compared.Findings
        );

    private static SheetSection Bag(PlotPlan plan, StoreBlendForPlan blend)
    {
        var comparison = blend.Comparison;
        var bag = comparison.Bag;
        string name = FigureCode.Of("bag", FigureCode.Word(bag.Label));
        var sheet = new SectionWriter($"bag-{FigureCode.Word(bag.Label)}", $"What is in {bag.Label}");
        sheet.Say(
            $"{comparison.Offer.Package} for {plan.Currency.Print(comparison.Offer.Price)}; the bag says it plants "
                + $"{Amounts.Print(bag.ClaimedArea, "ac", 2)}. Shares of a full stand are those on that area, "
                + $"{SowingMethods.Words[plan.ComparedMethod]}."
        );
        sheet.Table(
            [
                "kind",
                "pure seed, % of the bag",
                "alive of it, %",
                "share of a full stand",
                "part of the stand, %",
                "live seeds/ft2",
            ],
            blend.Contents.Select(c => new SheetRow
            {
                Cells =
                [
                    SheetText.Name(c.Part.Kind),
                    Amounts.Print(c.Tagged.Analysis.PureSeed.Percent, 2),
                    Amounts.Print(c.Part.Component.Viability!.Value.Percent, 0),
                    Amounts.Print(c.Part.ShareOfFullStand.Chosen, 2),
                    Amounts.Print(c.Part.ShareOfStand.Percent, 0),
                    Amounts.Print(c.Part.LiveSeedsPerSquareFoot, 1),
                ],
            })
        );
        string coating = bag.Tag.Coating.Value > 0 ? $" (coating {Amounts.Print(bag.Tag.Coating, 2)} within it)" : "";
        sheet.Say(
            $"The rest of the bag: inert matter {Amounts.Print(bag.Tag.Inert, 2)}{coating}, other crops "
                + $"{Amounts.Print(bag.Tag.OtherCrop, 2)}, weeds {Amounts.Print(bag.Tag.Weed, 2)}."
        );
        var total = comparison.AsClaimed.StandTotal;
        sheet.Figure(
            $"{name}.claimed",
            "on the area it claims",
            new(
                $"{Amounts.Print(total.Chosen, 2)} of a full stand ({Amounts.Print(total.Lowest, 2)} to "
                    + $"{Amounts.Print(total.Highest, 2)} over the published full rates)",
                SheetAmount.Number(total.Chosen, SeedSection.FullStands).Within(total.Lowest, total.Highest)
            ),
            comparison.AsClaimed
        );
        sheet.Figure(
            $"{name}.covers",
            "what it really covers",
            new(
                $"{Amounts.Print(comparison.ReallyCovers, "ac", 2)} at one full stand "
                    + $"({Amounts.Print(comparison.ReallyCoversAtLeast, "ac", 2)} to "
                    + $"{Amounts.Print(comparison.ReallyCoversAtMost, "ac", 2)})",
                SheetAmount
                    .Acres(comparison.ReallyCovers)
                    .Within(comparison.ReallyCoversAtLeast.Acres, comparison.ReallyCoversAtMost.Acres)
            ),
            blend.CoveredLine
        );
        sheet.Figure(
            $"{name}.acre",
            "an acre of living stand from the bag",
            new(plan.Currency.Print(comparison.BagCostPerAcre), SheetAmount.Money(comparison.BagCostPerAcre, plan.Currency)),
            blend.BagCostLine
        );
        string unit = blend.Bags == 1 ? "bag" : "bags";
        sheet.Figure(
            $"{name}.buy",
            $"to sow {Amounts.Print(plan.Plot.Area, "ac", 2)} at one full stand",
            new(
                $"{Amounts.Print(blend.Bags, 0)} {unit}, {plan.Currency.Print(blend.BagsCost)}",
                SheetAmount.Money(blend.BagsCost, plan.Currency)
            ),
            blend.BagsLine
        );
        return sheet.Close();
    }

    private static SheetSection Plain(PlotPlan plan, StoreBlendForPlan blend)
    {
        var comparison = blend.Comparison;
        var sheet = new SectionWriter(
            $"plain-seed-{FigureCode.Word(comparison.Bag.Label)}",
            $"The nearest blend from plain lots, beside {comparison.Bag.Label}"
        );
        string name = FigureCode.Of("bag", FigureCode.Word(comparison.Bag.Label));
        if (blend.PlainOrder is not { Cost: { } orderCost } order || comparison.PlainCostPerAcre is not { } plainCost)
        {
            sheet.Say("None of the bag's kinds is on offer as a plain lot.");
            return sheet.Close();
        }

        sheet.Say(
            $"To weigh out for {Amounts.Print(plan.Plot.Area, "ac", 2)} at one full stand, each kind from the lot whose living "
                + "pound is cheapest:"
        );
        sheet.Table(
            ["kind", "lot", "share of a full stand", "weigh out", "buy", plan.Currency.CostColumn, "left over"],
            blend.PlainLines.Select(x => new SheetRow
            {
                Cells =
                [
                    SheetText.Name(x.Part.Kind),
                    x.Line.Component.Lot!.Label,
                    Amounts.Print(x.Part.ShareOfFullStand.Chosen, 2),
                    SheetText.Weight(x.Line.Needed),
                    SheetText.Packages(x.Line.Bags, x.Line.Package!),
                    plan.Currency.Print(x.Line.Cost!.Value).Split(' ')[0],
                    SheetText.LeftOver(x.Line.LeftOver),
                ],
            })
        );
        if (!comparison.NotOnOffer.IsEmpty)
        {
            sheet.Say(
                $"Not on offer as plain seed: {string.Join(", ", comparison.NotOnOffer.Select(SheetText.Name))}, "
                    + $"{Amounts.Print(comparison.ShareNotOnOffer, 0)} of the bag's stand. The other kinds take their room."
            );
        }

        sheet.Figure(
            $"{name}.plain.acre",
            "an acre of living stand from plain lots",
            new(plan.Currency.Print(plainCost), SheetAmount.Money(plainCost, plan.Currency)),
            blend.PlainCostLines,
            order.Planned
        );
        sheet.Figure(
            $"{name}.plain.buy",
            "whole bags of plain seed for this plot",
            new(plan.Currency.Print(orderCost), SheetAmount.Money(orderCost, plan.Currency)),
            order
        );
        sheet.Say(
            $"By the acre of living stand {Cheaper(blend.SavedByPlainPerAcre!.Value, plan.Currency)}. "
                + $"In whole bags for this plot {Cheaper(blend.SavedByPlainInBags!.Value, plan.Currency)}."
        );
        return sheet.Close();
    }

    private static string Cheaper(decimal savedByPlain, Currency currency)
    {
        string cheaper = savedByPlain > 0 ? "plain seed" : "the store's bag";
        return savedByPlain == 0 ? "both cost the same" : $"{cheaper} is cheaper by {currency.Print(Math.Abs(savedByPlain))}";
    }
}
