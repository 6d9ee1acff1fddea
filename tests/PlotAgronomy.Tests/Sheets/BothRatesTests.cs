using PlotAgronomy.Seeds;
using PlotAgronomy.Sheets;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.Sheets;

/// <summary>Seed with much hard seed has two bulk rates, and the sheet says which counts what.</summary>
public class BothRatesTests
{
    [Fact]
    public void The_lower_rate_is_the_one_that_counts_hard_seed_as_living()
    {
        var plan = PlanFile.Read(File.ReadAllText(Repository.PathOf("samples/data/frost-seeding.json"))).Plan!;
        var hard = SeedAnalysis.FromFractions(Fraction.FromPercent(98), Fraction.FromPercent(60), Fraction.FromPercent(30));
        var answers = (plan with { Kinds = [.. plan.Kinds.Select(k => k with { Offer = k.Offer with { Item = k.Offer.Item with { Analysis = hard } } })] }).Solve();
        string sheet = FieldSheet.Of(answers).ToMarkdown();
        foreach (var sown in answers.Seed.Value.Kinds)
        {
            // By hand: living part 0.98 x (0.60 + 0.30), or 0.98 x 0.60 where only what germinated counts.
            double live = sown.Part.LiveRate.PoundsPerAcre;
            Assert.Contains(
                $"{Amounts.Print(live / (0.98 * 0.9), 2)} lb/ac bulk counts hard or dormant seed as living, {Amounts.Print(live / (0.98 * 0.6), 2)} lb/ac counts only what germinated",
                sheet,
                StringComparison.Ordinal);
        }
    }
}
