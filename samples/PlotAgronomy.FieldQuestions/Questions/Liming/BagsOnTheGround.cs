using PlotAgronomy.Liming;
using PlotAgronomy.Plots;

namespace PlotAgronomy.FieldQuestions.Liming;

/// <summary>Half an acre owes a ton and a half an acre. Twelve bags of pellets went on in spring. What is still to buy, and may
/// clover be sown this fall?</summary>
internal static class BagsOnTheGround
{
    private static readonly Area Plot = Area.FromAcres(0.5);

    internal static void Answer(TextWriter output)
    {
        var sieves = SieveAnalysis.FromPercent((8, 100), (20, 100), (60, 98));
        var pellets = LimingMaterial.FromAnalysis("pellets", LimingForm.Pelletized, ccePercent: 91, sieves);
        var pure = LimeBasis.Find("pure-carbonate");
        var plow = Length.FromInches(6);
        var due = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(1.5), 6.5, plow, pure, Institution.Practice);
        var spring = LimeApplication.FromBags(12, Mass.FromPounds(40), pellets, new DateOnly(2026, 4, 11));
        output.Tell(LimeBalance.For(due, Plot, [spring]));

        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = due,
            Material = pellets,
            Area = Plot,
            Package = Package.FromWeight(Mass.FromPounds(40)),
            Price = 6.20m,
            AlreadyApplied = [spring],
            WorkedDepth = plow,
        });
        output.WriteLine($"Still {order.Bags} bags for {Currency.FromCode("USD").Print(order.Cost ?? 0)}; unrounded "
            + $"{Amounts.Print(order.ExactProductRate, "lb/ac", 0)}.");
        output.Tell(order);

        var outlook = LimeOutlook.For(new LimeOutlookRequest
        {
            Rate = due,
            Material = pellets,
            LimedOn = spring.On!.Value,
            PlantingOn = new DateOnly(2026, 9, 12),
            ShareDelivered = Fraction.FromValue(order.AlreadyApplied / (order.AlreadyApplied + order.Product)),
            Soil = new SoilReport { Laboratory = "a strip", WaterPh = WaterPh.FromValue(5.6) },
            Kinds = [KindCatalog.Standard.Find("crimson clover")],
        });
        output.Tell(outlook);
        output.WriteLine($"The spring's pellets began to work on {outlook.StartsOn.Aloud()}; expect pH "
            + $"{Amounts.Print(outlook.ExpectedPhLow, 1)} to {Amounts.Print(outlook.ExpectedPhHigh, 1)} on the day.");
    }
}
