using PlotAgronomy.Liming;
using PlotAgronomy.Plots;

namespace PlotAgronomy.FieldQuestions.Liming;

/// <summary>Three plots of a club in North Carolina. Last time a ton an acre went over all of them; now each has its own test,
/// and a neighbor says that pellets may be put on thinner.</summary>
internal static class Blanket
{
    private const double Target = 6.2;

    internal static void Answer(TextWriter output)
    {
        LimePlotNeed[] plots =
        [
            Plot("orchard", 0.8, 5.2, acidity: 1.9), Plot("creek", 0.5, 6.3, acidity: 0.7), Plot("ridge", 1.2, 5.7, acidity: 1.2),
        ];
        foreach (var plot in plots)
        {
            var printed = Institution.NorthCarolina.LimeRounding!.Apply(plot.Rate!.OfBasis);
            output.WriteLine($"{plot.Name}, {Amounts.Print(plot.Area, "ac", 1)}: {Amounts.Print(printed, "ton/ac", 1)}");
        }

        var ton = ApplicationRate.FromShortTonsPerAcre(1);
        var blanket = LimeRate.FromBasis(ton, Target, Length.FromInches(8), plots[0].Rate!.Basis, Institution.NorthCarolina);
        var strength = LimeFigure.FromPercent(LimeIndex.NorthCarolinaStandard, 92);
        var dealer = LimingMaterial.FromLabel("the dealer's ground lime", LimingForm.GroundLimestone, strength);
        var both = LimeByTest.Compare(plots, blanket, dealer, new DateOnly(2026, 8, 3));
        output.WriteLine($"Over everything: {Pounds(both.Blanket)} of {both.Material.Name}. By the tests: "
            + $"{Pounds(both.ByTest)}. The blanket wastes {Pounds(both.Wasted)} and leaves {Pounds(both.LeftShort)} short.");
        output.Tell(both);

        var coarse = LimeBasis.Find("georgia-ag-lime");
        var georgia = LimeRate.FromBasis(ton, Target, Length.FromInches(6), coarse, Institution.Find("Georgia"));
        foreach (var fine in new[] { FineLimeAllowance.For(plots[0].Rate!), FineLimeAllowance.For(georgia) })
        {
            output.WriteLine(fine is { Low: { } low, High: { } high }
                ? $"A ton by {fine.Rate.Institution}: {Whole(low)} to {Whole(high)} of pellets will do."
                : $"By {fine.Rate.Institution}, pellets are not put on thinner:");
            output.Tell(fine);
        }
    }

    private static string Whole(ApplicationRate rate) => Amounts.Print(rate, "lb/ac", 0);

    private static string Pounds(Mass mass) => Amounts.Print(mass, "lb", 0);

    private static LimePlotNeed Plot(string name, double acres, double waterPh, double acidity)
    {
        var report = new SoilReport
        {
            Laboratory = "North Carolina",
            SampledOn = new DateOnly(2025, 11, 4),
            SoilClass = SoilClass.Mineral,
            WaterPh = WaterPh.FromValue(waterPh),
            ExchangeableAcidity = PlotAgronomy.Soil.CationCharge.FromMilliequivalentsPer100CubicCentimeters(acidity),
        };
        return LimePlotNeed.FromRate(name, Area.FromAcres(acres), LimeMethod.NorthCarolina.NeedFor(report, Target).Rate, report);
    }
}
