using PlotAgronomy.Liming;
using PlotAgronomy.Plots;

namespace PlotAgronomy.FieldQuestions.Liming;

/// <summary>Half an acre owes a ton and a half an acre. Twelve bags of pellets went on in spring; wood ash lies in the shed. What is
/// still to buy, and may clover be sown this fall?</summary>
internal static class BagsOnTheGround
{
    private static readonly Area Plot = Area.FromAcres(0.5);

    internal static void Answer(TextWriter output)
    {
        // The pellets' label prints their elements, not their strength.
        double strength = LimingCompound.CcePercentFromElements(Fraction.FromPercent(30), Fraction.FromPercent(4));
        var pellets = LimingMaterial.FromAnalysis("pellets", LimingForm.Pelletized, strength, SieveAnalysis.FromPercent((8, 100), (20, 100), (60, 98)));
        output.WriteLine($"30 % calcium and 4 % magnesium are as strong as {Amounts.Print(strength, 1)} % of pure lime. Pure:");
        foreach (var compound in LimingCompound.All.Where(c => c.Id is "calcite" or "dolomite" or "hydrated-lime" or "potash-of-ash" or "gypsum"))
        {
            output.WriteLine($"  {compound.Name}: {Amounts.Print(compound.CcePercent, 1)} % ({Amounts.Print(compound.Calcium, 1)} calcium, "
                + $"{Amounts.Print(compound.Magnesium, 1)} magnesium)");
        }

        var due = LimeRate.FromBasis(
            ApplicationRate.FromShortTonsPerAcre(1.5), 6.5, Length.FromInches(6), LimeBasis.Find("pure-carbonate"), Institution.Practice);
        var spring = LimeApplication.FromBags(12, Mass.FromPounds(40), pellets, new DateOnly(2026, 4, 11));
        output.Tell(LimeBalance.For(due, Plot, [spring]));

        var ash = LimingMaterial.FromAnalysis("ash of the stove", LimingForm.WoodAsh, 45, SieveAnalysis.FromPercent((8, 95), (20, 80), (60, 60)));
        var cce = LimeIndex.CalciumCarbonateEquivalent;
        output.WriteLine("Pellets and 120 lb of ash together: "
            + $"{NeutralizingPower.In(spring.Mass, pellets, cce).Plus(NeutralizingPower.In(Mass.FromPounds(120), ash, cce))}.");

        var order = LimeOrder.For(new LimeOrderRequest
        {
            Rate = due,
            Material = pellets,
            Area = Plot,
            Package = Package.FromWeight(Mass.FromPounds(40)),
            Price = 6.20m,
            AlreadyApplied = [spring],
            WorkedDepth = Length.FromInches(6),
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
            ShareDelivered = Fraction.FromValue(order.AlreadyApplied.Pounds / (order.AlreadyApplied.Pounds + order.Product.Pounds)),
            Soil = new SoilReport { Laboratory = "a strip", WaterPh = WaterPh.FromValue(5.6) },
            Kinds = [KindCatalog.Standard.Find("crimson clover")],
        });
        output.WriteLine($"The spring's pellets began to work on {outlook.StartsOn:yyyy-MM-dd}; expect pH "
            + $"{Amounts.Print(outlook.ExpectedPhLow, 1)} to {Amounts.Print(outlook.ExpectedPhHigh, 1)} on the day.");
    }
}
