using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Seeds;

/// <summary>A hundred seeds of a bag of crimson clover were rolled in wet paper at home; fewer came up than the tag says. Two
/// plots hang on the bag, and another bag stands in the shop.</summary>
internal static class Sprouts
{
    internal static void Answer(TextWriter output)
    {
        var pure = Fraction.FromPercent(98);
        var hard = Fraction.FromPercent(6);
        var tag = SeedAnalysis.FromFractions(pure, Fraction.FromPercent(85), hard);
        var paper = GerminationTest.FromCount(germinated: 72, seeds: 100);
        output.WriteLine($"Counted: {paper}; two of three such counts lie within "
            + $"{Amounts.Print(100 * paper.StandardError, 1)} points of the truth.");
        var home = HomeTestVerdict.Compare(tag, paper);
        output.Tell(home);
        output.Tell(GerminationTolerance.Compare(tag.Germination, retest: paper.Germination));

        // Of the hard seed about half is taken to come up in the year of sowing.
        var rule = ViabilityRule.Credit(hardCredit: 0.5, dormantCredit: 0);
        var bag = SeedAnalysis.FromFractions(pure, home.KeepTag ? tag.Germination : paper.Germination, hard);
        output.WriteLine($"Counted as alive ({rule.Name}): {Amounts.Print(PureLiveSeed.PartOf(bag, rule), 1)} of the bag, so "
            + $"{Amounts.Print(100 * PureLiveSeed.ExtraToBuy(bag, rule), 0)} % more is sown than is meant to live.");

        var stand = PureLiveSeedRate.BroadcastPoundsPerAcre(18);
        var living = stand.Over(Area.FromAcres(0.35)) + stand.Over(Area.FromAcres(0.6));
        output.WriteLine($"Creek and ridge plot need {Amounts.Print(living.ToMass(), "lb", 1)} of living seed: "
            + $"{Amounts.Print(PureLiveSeed.BulkHolding(living, bag, rule).ToMass(), "lb", 1)} out of the bag, "
            + $"{Amounts.Print(PureLiveSeed.BulkHolding(living, tag, rule).ToMass(), "lb", 1)} if the tag were right.");

        var fresh = SeedAnalysis.FromFractions(Fraction.FromPercent(99), Fraction.FromPercent(90), Fraction.FromPercent(2));
        decimal price = PureLiveSeed.BreakEvenPrice(2.40m, bag, fresh, rule);
        output.WriteLine("At 2.40 a pound for this one, the fresh bag is the better buy below "
            + $"{Amounts.Print((double)price, 2)} a pound.");
    }
}
