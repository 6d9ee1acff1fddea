using PlotAgronomy.Blends;

namespace PlotAgronomy.Sheets;

/// <summary>A store's blend beside the nearest blend from plain lots.</summary>
internal static class StoreBlendsSheet
{
    internal static FieldSheet Write(PlotPlan plan)
    {
        var compared = plan.StoreBlends.Select(bag => BagOrPlainSeed.Compare(bag, plan.SowingMethod, plan.SeedOffers)).ToList();
        return SheetEnding.Close(
            $"{plan.Plot.Name}: bag or plain seed",
            [.. compared.SelectMany(c => new[] { Bag(plan, c), Plain(plan, c) })],
            Finding.InOrder(compared.SelectMany(c => c.Findings.Concat(c.AsClaimed.Findings)))
        );
    }

    private static SheetSection Bag(PlotPlan plan, BagOrPlainSeed comparison)
    {
        var bag = comparison.Bag;
        string name = FigureCode.Of("bag", FigureCode.Word(bag.Label));
        var sheet = new SectionWriter($"bag-{FigureCode.Word(bag.Label)}", $"What is in {bag.Label}");
        sheet.Say(
            $"{comparison.Offer.Package} for {plan.Currency.Print(comparison.Offer.Price)}; the bag says it plants "
                + $"{Amounts.Print(bag.ClaimedArea, "ac", 2)}. Shares of a full stand are those on that area, "
                + $"{SowingMethods.InWords(plan.SowingMethod)}."
        );
        var tagged = bag.Tag.Components.ToDictionary(c => c.Kind.Id);
        sheet.Table(
            [
                "kind",
                "pure seed, % of the bag",
                "alive of it, %",
                "share of a full stand",
                "part of the stand, %",
                "live seeds/ft2",
            ],
            comparison.AsClaimed.Parts.Select(p => new SheetRow
            {
                Cells =
                [
                    SheetText.Name(p.Kind),
                    Amounts.Print(tagged[p.Kind.Id].Analysis.PureSeed.Percent, 2),
                    Amounts.Print(p.Component.Viability!.Value.Percent, 0),
                    Amounts.Print(p.ShareOfFullStand.Chosen, 2),
                    Amounts.Print(p.ShareOfStand.Percent, 0),
                    Amounts.Print(p.LiveSeedsPerSquareFoot, 1),
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
            comparison.CoveredLine()
        );
        sheet.Figure(
            $"{name}.acre",
            "an acre of living stand from the bag",
            new(plan.Currency.Print(comparison.BagCostPerAcre), SheetAmount.Money(comparison.BagCostPerAcre, plan.Currency)),
            comparison.BagCostLine(plan.Currency)
        );
        var (bags, cost) = comparison.BagsFor(plan.Plot.Area);
        string unit = bags == 1 ? "bag" : "bags";
        sheet.Figure(
            $"{name}.buy",
            $"to sow {Amounts.Print(plan.Plot.Area, "ac", 2)} at one full stand",
            new($"{Amounts.Print(bags, 0)} {unit}, {plan.Currency.Print(cost)}", SheetAmount.Money(cost, plan.Currency)),
            comparison.BagsLine(plan.Plot.Area)
        );
        return sheet.Close();
    }

    private static SheetSection Plain(PlotPlan plan, BagOrPlainSeed comparison)
    {
        var sheet = new SectionWriter(
            $"plain-seed-{FigureCode.Word(comparison.Bag.Label)}",
            $"The nearest blend from plain lots, beside {comparison.Bag.Label}"
        );
        string name = FigureCode.Of("bag", FigureCode.Word(comparison.Bag.Label));
        if (comparison.Plain is not { } plain || comparison.PlainCostPerAcre is not { } plainCost)
        {
            sheet.Say("None of the bag's kinds is on offer as a plain lot.");
            return sheet.Close();
        }

        var order = BagOrder.For(plain, plan.Plot.Area);
        sheet.Say(
            $"To weigh out for {Amounts.Print(plan.Plot.Area, "ac", 2)} at one full stand, each kind from the lot whose living "
                + "pound is cheapest:"
        );
        sheet.Table(
            ["kind", "lot", "share of a full stand", "weigh out", "buy", $"cost, {plan.Currency.Code}", "left over"],
            order
                .Lines.Zip(plain.Parts)
                .Select(x => new SheetRow
                {
                    Cells =
                    [
                        SheetText.Name(x.Second.Kind),
                        x.First.Component.Lot!.Label,
                        Amounts.Print(x.Second.ShareOfFullStand.Chosen, 2),
                        SheetText.Weight(x.First.Needed.ToMass()),
                        FertilizerSection.Packages(x.First.Bags, x.First.Package!),
                        plan.Currency.Print(x.First.Cost!.Value).Split(' ')[0],
                        SheetText.LeftOver(x.First.LeftOver.ToMass()),
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
            [.. comparison.PlainCostLines(plan.Currency)],
            plain
        );
        sheet.Figure(
            $"{name}.plain.buy",
            "whole bags of plain seed for this plot",
            new(plan.Currency.Print(order.Cost!.Value), SheetAmount.Money(order.Cost.Value, plan.Currency)),
            order
        );
        sheet.Say(Verdict(plan, comparison, plainCost, order.Cost.Value));
        return sheet.Close();
    }

    private static string Verdict(PlotPlan plan, BagOrPlainSeed comparison, decimal plainCost, decimal plainBags)
    {
        decimal storeBags = comparison.BagsFor(plan.Plot.Area).Cost;
        string byAcre = Cheaper(comparison.BagCostPerAcre, plainCost, plan.Currency),
            byBags = Cheaper(storeBags, plainBags, plan.Currency);
        return $"By the acre of living stand {byAcre}. In whole bags for this plot {byBags}.";
    }

    private static string Cheaper(decimal bag, decimal plain, Currency currency)
    {
        string cheaper = plain < bag ? "plain seed" : "the store's bag";
        return bag == plain ? "both cost the same" : $"{cheaper} is cheaper by {currency.Print(Math.Abs(bag - plain))}";
    }
}
