using System.Collections.Immutable;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Sheets;

/// <summary>Lots of one kind ranked by the cost of an acre of the same living stand, and what each price pays for.</summary>
internal static class SeedLotsSheet
{
    internal static FieldSheet Write(PlotPlan plan)
    {
        var sowable = plan.KindsInSeveralLots.Where(k => k.Rates?.For(plan.SowingMethod) is not null).ToList();
        var ranked = sowable
            .Select(k => SeedLotComparison.Rank([.. plan.SeedOffers.Where(o => o.Item.Kind.Id == k.Id)], Stand(plan, k)))
            .ToList();
        return SheetEnding.Close(
            $"{plan.Plot.Name}: lots of seed for the same living stand",
            [
                .. ranked.SelectMany(r => Sections(plan, r)),
                .. Unsown([.. plan.KindsInSeveralLots.Except(sowable)], plan.SowingMethod),
            ],
            Finding.InOrder(ranked.SelectMany(r => r.Findings)),
            told: ranked.SelectMany(r => r.Ranked).SelectMany(lot => Told(plan, lot))
        );
    }

    /// <summary>The stand the plan wants of the kind, or a full one of a kind that is offered but not grown.</summary>
    private static PureLiveSeedRate Stand(PlotPlan plan, CropKind kind) =>
        kind.FullRange(plan.SowingMethod).Middle
        * (plan.Kinds.FirstOrDefault(k => k.Kind.Id == kind.Id)?.Share.ShareOfFullStand ?? 1);

    private static IEnumerable<SheetSection> Sections(PlotPlan plan, SeedLotComparison comparison)
    {
        var kind = comparison.Ranked[0].Lot.Kind;
        string currency = plan.Currency.Code;
        var costs = new SectionWriter($"costs-{kind.Id}", $"{SheetText.Name(kind)}: what an acre costs");
        costs.Say(
            $"Every lot for the same stand: {Amounts.Print(comparison.Target.PoundsPerAcre, 2)} lb of pure live seed per acre, "
                + $"{SowingMethods.InWords(comparison.Target.Method)}. Counted as alive: "
                + $"{comparison.Ranked[0].Seeding.Rule.Formula}."
        );
        var rows = comparison.Ranked.Select(r => (Lot: r, Row: RowOf(costs, plan, r))).ToList();
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
        costs.Remark(rows.SelectMany(r => Told(plan, r.Lot).Select(f => (r.Row.Figure!.Code, $"{f.Text} [{f.Code}]"))));
        var first = comparison.Ranked[0];
        var bags = comparison.Ranked.MinBy(r => r.CostFor(plan.Plot.Area))!;
        costs.Say(
            $"Cheapest by the acre: {first.Lot.Label}, {plan.Currency.Print(first.CostPerAcre)}. Cheapest in whole bags for "
                + $"this plot: {bags.Lot.Label}, {plan.Currency.Print(bags.CostFor(plan.Plot.Area))}."
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

    private static SheetRow RowOf(SectionWriter sheet, PlotPlan plan, RankedLot lot) =>
        sheet.Row(
            FigureCode.Of("lot", lot.Lot.Kind.Id, FigureCode.Word(lot.Lot.Label)),
            lot.Lot.Label,
            new(plan.Currency.Print(lot.CostPerAcre), SheetAmount.Money(lot.CostPerAcre, plan.Currency)),
            [
                Amounts.Print(lot.Place, 0),
                lot.Lot.Label,
                Amounts.Print(lot.Seeding.PureLiveSeedPart.Percent, 1),
                Amounts.Print(lot.Seeding.Bulk.PoundsPerAcre, 2),
                Money(plan, lot.CostPerAcre),
                lot.Place == 1 ? "-" : Amounts.Print((double)lot.OverCheapest * 100, 0),
                FertilizerSection.Packages(lot.PackagesFor(plan.Plot.Area), lot.Offer.Package),
                Money(plan, lot.CostFor(plan.Plot.Area)),
            ],
            [lot.CostLine(plan.Currency)],
            lot.Seeding
        );

    private static ImmutableArray<Finding> Told(PlotPlan plan, RankedLot lot) =>
        Finding.InOrder(lot.Lot.Cautions(plan.SowingMethod).Concat(lot.Seeding.Findings));

    private static IEnumerable<SheetSection> Unsown(ImmutableArray<CropKind> kinds, SowingMethod method)
    {
        foreach (var kind in kinds)
        {
            var sheet = new SectionWriter($"no-rate-{kind.Id}", SheetText.Name(kind));
            sheet.Say(
                $"No full rate is published for {SheetText.Name(kind)} {SowingMethods.InWords(method)}, so its lots have no "
                    + "common stand to be held against."
            );
            yield return sheet.Close();
        }
    }

    /// <summary>An amount without the currency, which stands in the heading.</summary>
    private static string Money(PlotPlan plan, decimal amount) => plan.Currency.Print(amount).Split(' ')[0];
}
