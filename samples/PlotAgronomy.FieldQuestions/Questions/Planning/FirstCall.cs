using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.FieldQuestions.Planning;

/// <summary>A report prints two tons of lime and not of which, 60 to 120 pounds of potash, and the oats have no tag. Whom to call
/// first?</summary>
internal static class FirstCall
{
    internal static void Answer(TextWriter output)
    {
        var oats = KindCatalog.Standard.Find("winter oats");
        var lime = LimingMaterial.FromAnalysis("ground lime", LimingForm.GroundLimestone, 92, SieveAnalysis.FromPercent((20, 95), (60, 65), (100, 50)));
        var potash = FertilizerProduct.Create("0-0-60", FertilizerAnalysis.FromGrade("0-0-60"));
        var plan = new PlotPlan
        {
            Plot = new Plot { Name = "Mill Corner", Measured = PlotArea.Stated(Area.FromAcres(0.8)) },
            Method = PlantingMethod.TilledAndPacked,
            PlantingDate = new(2026, 9, 8),
            Printed = new PrintedAdvice
            {
                Crop = "oats",
                Lime = PrintedLimeRate.Read(ApplicationRate.FromShortTonsPerAcre(2), 6.5, Length.FromInches(6), basis: null, institution: null),
                Potash = ApplicationRate.FromPoundsPerAcre(60),
                PotashUpTo = ApplicationRate.FromPoundsPerAcre(120),
            },
            Kinds =
            [
                new() { Share = KindShare.FromShare(oats, 1), Offer = Offer.InBags(SeedLot.Untagged(oats, "from the elevator"), Mass.FromPounds(50), 17) },
            ],
            LimeOffers = [Offer.InBags(lime, Mass.FromPounds(50), 5)],
            FertilizerOffers = [Offer.InBags(potash, Mass.FromPounds(50), 28)],
            Currency = Currency.FromCode("USD"),
        };
        foreach (var stake in plan.Solve().Stakes.Questions.Where(q => !q.ChangesNothing && !q.Cases.IsEmpty))
        {
            output.WriteLine(stake.Question.Text);
            output.WriteLine($"  {plan.Currency.Print(stake.MoneyAtStake)} rest on it");
            if (stake.LimePackages is var (fewest, most) && fewest < most)
            {
                output.WriteLine($"  {fewest} to {most} bags of lime");
            }

            if (stake.NeedOf(PlantNutrient.Potash) is var (least, greatest) && least < greatest)
            {
                output.WriteLine($"  {least} to {greatest} of potash");
            }

            if (stake.Seed is var (little, much) && little.Pounds < much.Pounds)
            {
                output.WriteLine($"  {Amounts.Print(little, "lb", 0)} to {Amounts.Print(much, "lb", 0)} of seed");
            }
        }
    }
}
