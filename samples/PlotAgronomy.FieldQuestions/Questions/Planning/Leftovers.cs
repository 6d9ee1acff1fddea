using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Planning;

/// <summary>A bag of oats and a bag of last year's clover lie in the shed; the store has fresh clover. How far does the shed
/// reach, and which clover is the cheaper to sow?</summary>
internal static class Leftovers
{
    internal static void Answer(TextWriter output)
    {
        var (oats, clover) = (KindCatalog.Standard.Find("winter oats"), KindCatalog.Standard.Find("crimson clover"));
        Offer<SeedLot>[] offers =
        [
            InShed(oats, "shed oats", germination: 84, pounds: 50),
            InShed(clover, "last year's clover", germination: 61, pounds: 10),
            Offer.InBags(Lot(clover, "fresh clover", germination: 88), Mass.FromPounds(10), 24),
        ];
        var shelf = SeedShelf.FromOffers(offers);
        var plan = new PlotPlan
        {
            Plot = new Plot { Name = "Owl Run", Measured = PlotArea.Stated(Area.FromAcres(1.2)), Drainage = DrainageClass.Well },
            Method = PlantingMethod.TilledAndPacked,
            SeedOffers = [.. offers],
            Kinds = [Half(shelf.Cheapest(oats)), Half(shelf.Cheapest(clover))],
            Currency = Currency.FromCode("USD"),
        };
        var reach = plan.UseUp().Value;
        string first = reach.RunsOutFirst!.Name;
        output.WriteLine($"The shed plants {Amounts.Print(reach.Plants!.Value, decimals: 2)}; then {first} runs out.");
        foreach (var line in reach.Seeds)
        {
            output.WriteLine($"  {line.Name}: short of the whole plot by {Amounts.Print(line.ShortForPlot, "lb", 1)}");
        }

        foreach (var kind in plan.Solve().Seed.Value.Kinds)
        {
            string lots = string.Join(" and then ", [kind.Planned.Offer.Item.Label, .. kind.FromOthers.Select(l => $"{l}")]);
            output.WriteLine($"Sow {lots}, for {plan.Currency.Print(kind.Cost)}");
            if (kind.Missing > Fraction.Zero)
            {
                output.WriteLine($"  {Amounts.Print(kind.Missing, 0)} of it nobody has on offer");
            }
            output.Tell(kind.Lots.Value);
        }
    }

    private static PlannedKind Half(SeedChoice choice) =>
        new() { Share = KindShare.FromShare(choice.Kind, 0.5), Offer = choice.Offer!, Choice = choice };

    private static Offer<SeedLot> InShed(CropKind kind, string label, double germination, double pounds) =>
        Offer.InBags(Lot(kind, label, germination), Mass.FromPounds(pounds), pricePerBag: 0) with { Available = 1 };

    private static SeedLot Lot(CropKind kind, string label, double germination) => new()
    {
        Label = label,
        Kind = kind,
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(germination)),
    };
}
