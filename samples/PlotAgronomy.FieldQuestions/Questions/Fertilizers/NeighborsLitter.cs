using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.FieldQuestions.Fertilizers;

/// <summary>A neighbor cleans a broiler house in fall and offers the litter, analyzed. Rye wants 60 pounds of nitrogen; the
/// soil test asks for 40 of phosphate.</summary>
internal static class NeighborsLitter
{
    internal static void Answer(TextWriter output)
    {
        var litter = Manure.Analyzed("the neighbor's litter", nitrogen: 54, phosphate: 58, potash: 45);
        var need = ApplicationRate.FromPoundsPerAcre(60);
        output.WriteLine($"For {Amounts.Print(need)} of nitrogen:");
        foreach (var way in ManureAvailability.All.Where(a => a.Pool == ManurePool.TotalNitrogen))
        {
            var rate = litter.ForNitrogen(need, NitrogenAvailability.FromPublished(way)).RichLot;
            output.WriteLine($"  {way.Situation}, {Amounts.Print(way.Available, 0)} of it counts: {Tons(rate.Rate)}, which "
                + $"brings {Pounds(rate.Phosphate)} of phosphate and {Pounds(rate.Potash)} of potash");
        }

        var season = NitrogenAvailability.FromPublished(ManureAvailability.GrowingSeason);
        var phosphate = ApplicationRate.FromPoundsPerAcre(40);
        output.WriteLine($"For {Amounts.Print(phosphate)} of phosphate, all of it counted:");
        output.Tell(litter.ForPhosphate(phosphate, PhosphateAvailability.All, season));
        var ontario = PhosphateAvailability.FromPublished(ManureAvailability.Find("any-manure-ontario-p-this-year"));
        output.WriteLine($"Where only {Amounts.Print(ontario.OfTotal, 0)} counts in the first year, as in Ontario, it takes "
            + $"{Tons(litter.ForPhosphate(phosphate, ontario, season).RichLot.Rate)}.");

        output.WriteLine($"Without an analysis, for {Amounts.Print(need)} of nitrogen in the growing season:");
        foreach (var printed in Manure.All.Where(m => m.Name.Contains("broiler", StringComparison.Ordinal)))
        {
            var guess = printed.ForNitrogen(need, season);
            output.WriteLine($"  {printed.Name}: {Between(guess.RichLot.Rate, guess.PoorLot.Rate)}");
        }

        var bedding = Manure.Find("horse-undried").ForNitrogen(need, NitrogenAvailability.FromFraction(Fraction.FromPercent(30)));
        output.WriteLine($"The stable's manure, if three tenths of its nitrogen count: {Tons(bedding.RichLot.Rate)}.");
    }

    private static string Between(ApplicationRate low, ApplicationRate high) =>
        high > low ? $"{Tons(low)} to {Tons(high)}" : Tons(low);

    private static string Tons(ApplicationRate rate) => Amounts.Print(rate, "ton/ac", 1);

    private static string Pounds(ApplicationRate rate) => Amounts.Print(rate, "lb/ac", 0);
}
