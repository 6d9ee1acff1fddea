using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Planning;

/// <summary>A report prints two tons of lime and not of which, and no pH; the oats have no tag. Whom to call first?</summary>
internal static class FirstCall
{
    internal static void Answer(TextWriter output)
    {
        var oats = KindCatalog.Standard.Find("winter oats");
        var sieved = SieveAnalysis.FromPercent((20, 95), (60, 65), (100, 50));
        var lime = LimingMaterial.FromAnalysis("ground lime", LimingForm.GroundLimestone, ccePercent: 92, sieved);
        var untagged = Offer.InBags(SeedLot.Untagged(oats, "from the elevator"), Mass.FromPounds(50), 17);
        var tons = ApplicationRate.FromShortTonsPerAcre(2);
        var plan = new PlotPlan
        {
            Plot = new Plot
            {
                Name = "Mill Corner",
                Measured = PlotArea.Stated(Area.FromAcres(0.8)),
                Drainage = DrainageClass.Well,
                IsNearWater = false,
            },
            Method = PlantingMethod.TilledAndPacked,
            PlantingDate = new(2026, 9, 8),
            Report = new SoilReport { Laboratory = "store laboratory" },
            Printed = new PrintedAdvice
            {
                Crop = "oats",
                Lime = PrintedLimeRate.Read(tons, targetPh: 6.5, depth: Length.FromInches(6), basis: null, institution: null),
                Nitrogen = ApplicationRate.FromPoundsPerAcre(40),
                Potash = ApplicationRate.FromPoundsPerAcre(60),
            },
            Kinds = [new() { Share = KindShare.FromShare(oats, 1), Offer = untagged }],
            LimeOffers = [Offer.InBags(lime, Mass.FromPounds(50), 5)],
            FertilizerOffers = [Bag("46-0-0", 30), Bag("0-0-60", 28)],
            Currency = Currency.FromCode("USD"),
        };
        foreach (var stake in plan.Solve().Stakes.Questions.Where(q => q.MoneyAtStake > 0))
        {
            output.WriteLine($"{stake.Question.Text} At stake: {stake.AtStake}.");
            if (stake.LimePackages is var (fewest, most) && fewest < most)
            {
                output.WriteLine($"  {Amounts.Print(most - fewest, 0)} bags of lime more or less");
            }

            if (stake.Seed is var (little, much) && little.Pounds < much.Pounds)
            {
                output.WriteLine($"  {Amounts.Print(much - little, "lb", 0)} of seed more or less");
            }
        }
    }

    private static Offer<FertilizerProduct> Bag(string grade, decimal price) =>
        Offer.InBags(FertilizerProduct.Create(grade, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), price);
}
