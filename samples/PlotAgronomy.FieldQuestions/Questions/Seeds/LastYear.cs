using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Seeds;

/// <summary>Two half bags of soybean are left in the pole barn. A neighbor would buy one; the other waits for spring.</summary>
internal static class LastYear
{
    internal static void Answer(TextWriter output)
    {
        var soybean = KindCatalog.Standard.Find("forage soybean");
        var today = new DateOnly(2026, 2, 20);
        SeedLot[] lots = [Lot("open", 2024, 11), Lot("full", 2025, 8)];
        var newer = lots[0].TestMonth > lots[1].TestMonth ? lots[0] : lots[1];
        foreach (var age in lots.Select(lot => TestAge.For(lot, Place.Find("Ohio"), today)))
        {
            string sale = age.IsCurrent ? "may still be sold on this test" : "has to be tested again before it is sold";
            output.WriteLine($"The {age.Lot.Label} bag, {age}: {sale}.");
            output.Warn(age.Findings);
        }

        var shipped = TestDateRule.Find("federal-general");
        output.WriteLine($"Shipped to another state, the {newer.Label} bag needs a test of the last {shipped.Months} months "
            + $"({shipped.HermeticMonths} if sealed in a can); limits are known for "
            + $"{string.Join(", ", TestDateRule.All.Select(r => r.State?.Name).OfType<string>().Distinct())}.");
        var barn = Temperature.FromDegreesFahrenheit(78);
        var cellar = Temperature.FromDegreesFahrenheit(52);
        var damp = Fraction.FromPercent(60);
        var dry = Fraction.FromPercent(40);
        output.WriteLine($"The barn in summer {Keeps(barn, damp)}; the cellar {Keeps(cellar, dry)}.");
        double longer = SeedStorage.LifeFactor(Fraction.FromPercent(13), Fraction.FromPercent(11), barn, cellar);
        output.WriteLine($"Two points drier in the cellar, seed lives about {Amounts.Print(longer, 0)} times as long. "
            + $"Sealed in a can it may hold {Amounts.Print(SeedStorage.HermeticCeilingFor(soybean), 1)} water at most.");

        var kept = StorageRecord.All.Where(r => r.Crop == "soybean").OrderBy(r => r.AfterTwelveMonths).ToList();
        output.WriteLine("A year in a warehouse, five lots on record: "
            + $"{Amounts.Print(kept[0].AtFirst, 0)} fell to {Amounts.Print(kept[0].AfterTwelveMonths, 0)} in the worst "
            + $"({Amounts.Print(kept[0].AfterSixMonths, 0)} at half time), {Amounts.Print(kept[^1].AtFirst, 0)} to "
            + $"{Amounts.Print(kept[^1].AfterTwelveMonths, 0)} in the best. Count sprouts before sowing.");

        SeedLot Lot(string label, int year, int month) => new()
        {
            Label = label,
            Kind = soybean,
            Analysis = SeedAnalysis.FromFractions(Fraction.FromPercent(99), Fraction.FromPercent(88)),
            TestMonth = TestMonth.FromYearAndMonth(year, month),
        };

        static string Keeps(Temperature air, Fraction humidity) =>
            SeedStorage.KeepsTheRuleOfHundred(air, humidity) ? "keeps the rule of a hundred" : "breaks the rule of a hundred";
    }
}
