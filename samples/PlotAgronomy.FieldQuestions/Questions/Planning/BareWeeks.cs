using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Planning;

/// <summary>Oats and turnips are planned. In which part of the year does the plot feed nothing, and what would fill
/// it?</summary>
internal static class BareWeeks
{
    private static readonly string[] Store = ["white-dutch-clover", "crimson-clover", "chicory", "buckwheat", "cereal-rye"];

    internal static void Answer(TextWriter output)
    {
        var plan = new PlotPlan
        {
            Plot = new Plot
            {
                Name = "Cold Spring",
                Measured = PlotArea.Stated(Area.FromAcres(0.7)),
                Drainage = DrainageClass.Well,
            },
            Method = PlantingMethod.TilledAndPacked,
            Kinds = [Half("winter oats", 50, 19), Half("forage-turnip", 5, 16)],
        };
        var seed = plan.Solve().Seed.Value;
        output.Tell(seed.Seasons);
        output.WriteLine($"{seed.Additions.Length} kinds would fill some of it. Of those the store has:");
        foreach (var addition in seed.Additions.Where(a => Store.Contains(a.Added.Kind.Id)))
        {
            output.WriteLine($"{addition}; {Amounts.Print(100 * addition.Filled / seed.Seasons.Lacking, 0)} % of what lacks.");
        }
    }

    private static PlannedKind Half(string name, double bag, decimal price)
    {
        var kind = KindCatalog.Standard.Find(name);
        var analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(86));
        var lot = new SeedLot { Kind = kind, Label = "of this year", Analysis = analysis };
        return new() { Share = KindShare.FromShare(kind, 0.5), Offer = Offer.InBags(lot, Mass.FromPounds(bag), price) };
    }
}
