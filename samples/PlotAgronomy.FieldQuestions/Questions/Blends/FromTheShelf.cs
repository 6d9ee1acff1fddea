using PlotAgronomy.Blends;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Blends;

/// <summary>Eight bags stand on a co-op's shelf. Half an acre is to feed from early to late fall for as little as it can, with
/// three families at least.</summary>
internal static class FromTheShelf
{
    private static readonly (string Kind, decimal PricePerPound)[] Prices =
    [
        ("cereal rye", 0.38m), ("winter oats", 0.46m), ("crimson clover", 2.15m), ("medium red clover", 3.40m),
        ("purple top turnip", 3.10m), ("daikon radish", 2.90m), ("chicory", 8.75m), ("austrian winter pea", 0.95m),
    ];

    internal static void Answer(TextWriter output)
    {
        Offer<SeedLot>[] shelf = [.. Prices.Select(p => Offer.ByThePound(Lot(p.Kind), p.PricePerPound))];
        var request = new RecipeRequest
        {
            Area = Area.FromAcres(0.5),
            Method = SowingMethod.Broadcast,
            Seasons = [SeasonOfUse.EarlyFall, SeasonOfUse.MidFall, SeasonOfUse.LateWinter],
            MinimumKinds = 4,
            MinimumFamilies = 3,
        };
        var proposal = RecipeProposal.Find(request, shelf);
        var recipe = proposal.Recipe ?? throw new InvalidOperationException(proposal.ToString());
        string proven = recipe.IsProvenCheapest ? "nothing on the shelf does it for less" : "the search was cut short";
        output.WriteLine($"Seed for {Currency.FromCode("USD").Print(recipe.Cost)}; {proven}.");
        foreach (string reason in recipe.Reasons)
        {
            output.WriteLine(reason);
        }

        var weighed = recipe.Batch.RoundUpTo(Mass.FromOunces(4));
        output.WriteLine($"Weigh out, by the quarter pound: {string.Join(", ", weighed.Lines)}.");
        output.Write(string.Concat(proposal.Excluded.Select(l => $"Left on the shelf: {l}.\n")));
        var fit = BlendFit.For(weighed);
        foreach (var need in fit.Inoculants)
        {
            output.WriteLine($"For {Amounts.Print(need.Seed.ToMass(), "lb", 2)} of legume, inoculant for {need.Group.Name}: "
                + $"{Amounts.Print(need.AtThoroughRate, "oz", 2)}.");
        }

        output.Warn(proposal.Findings.Concat(fit.Findings).Where(f => f.Severity > FindingSeverity.Note));
    }

    private static SeedLot Lot(string kind) => new()
    {
        Label = kind,
        Kind = KindCatalog.Standard.Find(kind),
        Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(88)),
    };
}
