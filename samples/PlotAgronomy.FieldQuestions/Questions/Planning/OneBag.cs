using PlotAgronomy.Planning;

namespace PlotAgronomy.FieldQuestions.Planning;

/// <summary>The report of a plot of six tenths of an acre asks for 40 pounds of nitrogen, 30 of phosphate and 70 of potash an
/// acre. The store has three bags. Can one of them do it alone?</summary>
internal static class OneBag
{
    internal static void Answer(TextWriter output)
    {
        var dollars = Currency.FromCode("USD");
        var plan = new PlotPlan
        {
            Plot = new Plot { Name = "Heron Bend", Measured = PlotArea.Stated(Area.FromAcres(0.6)) },
            Printed = new PrintedAdvice
            {
                Crop = "small grain with clover",
                Nitrogen = ApplicationRate.FromPoundsPerAcre(40),
                Phosphate = ApplicationRate.FromPoundsPerAcre(30),
                Potash = ApplicationRate.FromPoundsPerAcre(70),
            },
            FertilizerOffers = [Bag("13-13-13", 22), Bag("10-10-20", 25), Bag("0-0-60", 28)],
            Currency = dollars,
        };
        var fertilizer = plan.Solve().Fertilizer.Value;
        foreach (var alone in fertilizer.Alone)
        {
            string rate = Amounts.Print(alone.Rate, decimals: 0);
            output.WriteLine($"{alone.Analysis} alone, {rate}: {string.Join("; ", alone.Balances)}");
            foreach (var finding in alone.Findings)
            {
                output.WriteLine($"  {finding}");
            }
        }

        var best = fertilizer.BestAlone.Value;
        output.WriteLine($"Of single bags {best.Offer.Item.Name} fits best:");
        output.Tell(best);

        var cheapest = fertilizer.Purchase.Value;
        output.WriteLine($"Meeting every need costs {dollars.Print(cheapest.TotalCost)}:");
        foreach (var line in cheapest.Lines)
        {
            output.WriteLine($"  {line}");
        }

        output.Warn(cheapest.Findings);
    }

    private static Offer<FertilizerProduct> Bag(string grade, decimal price) =>
        Offer.InBags(FertilizerProduct.Create(grade, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), price);
}
