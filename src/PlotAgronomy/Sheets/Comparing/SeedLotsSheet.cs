using System.Collections.Immutable;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>Lots of one kind ranked by the cost of an acre of the same living stand, and what each price pays for.</summary>
internal static class SeedLotsSheet
{
    internal static FieldSheet Write(SeedLotsForPlan compared)
    {
        var plan = compared.Plan;
        return SheetEnding.Close(
            $"{plan.Plot.Name}: lots of seed for the same living stand",
            [.. compared.Kinds.SelectMany(k => Sections(plan, k)), .. Unsown(compared.WithoutRate, plan.ComparedMethod)],
            compared.Findings,
            told: compared.FindingsOfLots
        );
    }

    private static IEnumerable<SheetSection> Sections(PlotPlan plan, SeedLotsOfKind lots)
    {
        var kind = lots.Kind;
        var comparison = lots.Comparison;
        string currency = plan.Currency.Code;
        var costs = new SectionWriter($"costs-{kind.Id}", $"{SheetText.Name(kind)}: what an acre costs");
        costs.Say(
            $"Every lot for the same stand: {Amounts.Print(comparison.Target.PoundsPerAcre, 2)} lb of pure live seed per acre, "
                + $"{SowingMethods.Words[comparison.Target.Method]}. Counted as alive: "
                + $"{lots.CheapestByAcre.Ranked.Seeding.Rule.Formula}."
        );
        var rows = lots.Lots.Select(l => (Lot: l, Row: RowOf(costs, plan, l))).ToList();
        costs.Table(
            [
                "place",
                "lot",
                "pure live seed, %",
                "bulk, lb/ac",
                $"an acre, {currency}",
                "dearer by, %",
                $"bags for {Amounts.Print(plan.Plot.Area, "ac", 2)}",
                $"cost of the bags, {currency}",
            ],
            rows.Select(r => r.Row)
        );
        costs.Remark(rows.SelectMany(r => r.Lot.Findings.Select(f => (r.Row.Figure!.Code, $"{f.Text} [{f.Code}]"))));
        costs.Say(
            $"Cheapest by the acre: {lots.CheapestByAcre.Ranked.Lot.Label}, "
                + $"{plan.Currency.Print(lots.CheapestByAcre.Ranked.CostPerAcre)}. Cheapest in whole bags for this plot: "
                + $"{lots.CheapestForPlot.Ranked.Lot.Label}, {plan.Currency.Print(lots.CheapestForPlot.Cost)}."
        );
        yield return costs.Close();

        var shares = new SectionWriter($"price-{kind.Id}", $"{SheetText.Name(kind)}: what the price of a pound pays for");
        shares.Table(
            [
                "lot",
                $"a pound, {currency}",
                "living seed",
                "dead seed",
                "coating",
                "filler and weeds",
                "a living pound",
                "a million live seeds",
            ],
            comparison.Ranked.Select(r => new SheetRow
            {
                Cells =
                [
                    r.Lot.Label,
                    Money(plan, r.Value.PricePerPound),
                    Money(plan, r.Value.ForLivingSeed),
                    Money(plan, r.Value.ForDeadSeed),
                    Money(plan, r.Value.ForCoating),
                    Money(plan, r.Value.ForFiller),
                    Money(plan, r.Value.PricePerLivingPound),
                    r.Value.PricePerMillionLiveSeeds is { } million ? Money(plan, million) : "-",
                ],
            })
        );
        shares.Say("Living seed, dead seed, coating and filler add up to the price of a pound out of the bag.");
        yield return shares.Close();
    }

    private static SheetRow RowOf(SectionWriter sheet, PlotPlan plan, SeedLotForPlan lot)
    {
        var ranked = lot.Ranked;
        return sheet.Row(
            FigureCode.Of("lot", ranked.Lot.Kind.Id, FigureCode.Word(ranked.Lot.Label)),
            ranked.Lot.Label,
            new(plan.Currency.Print(ranked.CostPerAcre), SheetAmount.Money(ranked.CostPerAcre, plan.Currency)),
            [
                Amounts.Print(ranked.Place, 0),
                ranked.Lot.Label,
                Amounts.Print(ranked.Seeding.PureLiveSeedPart.Percent, 1),
                Amounts.Print(ranked.Seeding.Bulk.PoundsPerAcre, 2),
                Money(plan, ranked.CostPerAcre),
                lot.PercentDearer is { } percent ? Amounts.Print(percent, 0) : "-",
                SheetText.Packages(lot.Packages, ranked.Offer.Package),
                Money(plan, lot.Cost),
            ],
            [lot.CostLine],
            ranked.Seeding
        );
    }

    private static IEnumerable<SheetSection> Unsown(ImmutableArray<CropKind> kinds, SowingMethod method)
    {
        foreach (var kind in kinds)
        {
            var sheet = new SectionWriter($"no-rate-{kind.Id}", SheetText.Name(kind));
            sheet.Say(
                $"No full rate is published for {SheetText.Name(kind)} {SowingMethods.Words[method]}, so its lots have no "
                    + "common stand to be held against."
            );
            yield return sheet.Close();
        }
    }

    /// <summary>An amount without the currency, which stands in the heading.</summary>
    private static string Money(PlotPlan plan, decimal amount) => plan.Currency.Print(amount).Split(' ')[0];
}
