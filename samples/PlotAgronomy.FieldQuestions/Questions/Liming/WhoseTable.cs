using PlotAgronomy.Liming;
using PlotAgronomy.Plots;

namespace PlotAgronomy.FieldQuestions.Liming;

/// <summary>A laboratory prints a buffer pH and no lime. Alfalfa is to go in on 0.7 acres, and three limes are on offer: by
/// whose table is it limed, and with which of them?</summary>
internal static class WhoseTable
{
    private static readonly string[] States = ["Tri-State", "Iowa", "Wisconsin"];

    internal static void Answer(TextWriter output)
    {
        PlotSoil soil = new SoilReport
        {
            Laboratory = "a laboratory of the lake counties",
            WaterPh = WaterPh.FromValue(5.7),
            BufferPhs = [BufferPh.FromValue(6.5, SoilBuffer.Smp)],
            SoilClass = SoilClass.Mineral,
            SampledDepth = Length.FromInches(7),
        };
        var alfalfa = KindCatalog.Standard.Find("alfalfa");
        foreach (var state in States.Select(Institution.Find))
        {
            var target = LimeTarget.For(alfalfa, state);
            string prints = state.PrintsLimeTargets ? "prints" : "prints no targets; the kind's own sources give";
            string unread = state.UncheckedLimeMethods.IsEmpty ? "all its methods were read" : "some methods are from memory";
            output.WriteLine($"{state} {prints} pH {Amounts.Print(target.Ph ?? double.NaN, 1)}; {unread}.");
        }

        var compared = LimeMethodComparison.For(soil, 6.5, Length.FromInches(7), LimingMaterial.PureCarbonate);
        output.Tell(compared);

        // The plot lies in Ohio, where the buffer pH reads by this method.
        var need = LimeMethod.Find("tri-state-1995-smp").NeedFor(soil, 6.5);
        output.Tell(need);
        var rate = need.Rate ?? throw new InvalidOperationException(need.ToString());
        var stone = SieveAnalysis.FromPercent((8, 98), (20, 82), (60, 55), (100, 40));
        Offer<LimingMaterial>[] offers =
        [
            Offer.InBulk(LimingMaterial.FromAnalysis("quarry lime", LimingForm.GroundLimestone, 92, stone), pricePerTon: 34),
            Offer.InBags(LimingMaterial.FromAnalysis("pellets", LimingForm.Pelletized, 94), Mass.FromPounds(40), 6.10m),
            Offer.InBags(LimingMaterial.FromAnalysis("hydrated lime", LimingForm.Hydrated, 132), Mass.FromPounds(50), 14.50m),
        ];
        var costs = LimingMaterialComparison.For(rate, Area.FromAcres(0.7), offers);
        output.Tell(costs);
        if (costs.CheapestForPlot is { Order: { Cost: { } cost } order } best)
        {
            output.WriteLine($"Cheapest on this plot: {best.Offer.Item.Name}, {Amounts.Print(order.ProductRate, "ton/ac", 1)}, "
                + $"{Currency.FromCode("USD").Print(cost)}.");
        }
    }
}
