using PlotAgronomy.Nutrients;

namespace PlotAgronomy.FieldQuestions.Nutrients;

/// <summary>Two acres of alfalfa behind a plot: cut for hay, grazed by a neighbor's cattle, or left to the deer; then turned
/// under for a plot of rye.</summary>
internal static class HayOrGrazing
{
    internal static void Answer(TextWriter output)
    {
        var yield = CropYield.FromTonsPerAcre(3.5);
        output.WriteLine("What 3.5 tons of hay an acre carry off, by publication:");
        foreach (var figure in RemovalFigure.All.Concat(RemovalFigure.Unchecked).Where(f => f.Crop == "alfalfa hay"))
        {
            var gone = CropRemoval.CarriedOff(figure, yield);
            string doubt = gone.Findings.IsEmpty ? "" : $" ({gone.Findings[0].Text})";
            output.WriteLine($"  {figure.Origin.Sources[0].Title}: {Rates(gone)}{doubt}");
        }

        var own = RemovalFigure.Stated("alfalfa hay", YieldUnit.Ton, "the owner's forage test: 0.27 % P, 2.1 % K",
            (PlantNutrient.Phosphate, 12.4), (PlantNutrient.Potash, 50.6));
        output.Tell(CropRemoval.CarriedOff(own, yield));
        output.Tell(CropRemoval.CarriedOff(own, yield, partCarriedOff: Fraction.FromPercent(50)));

        var kentucky = RemovalFigure.Find("kentucky-alfalfa-hay");
        foreach (var kept in RetainedShare.All)
        {
            output.WriteLine($"Grazed ({kept}): {Rates(CropRemoval.Grazed(kentucky, yield, kept))}");
        }

        string browsed = CropRemoval.Browsed.Nutrients.IsEmpty ? "nothing that counts" : Rates(CropRemoval.Browsed);
        output.WriteLine($"Left to the deer: {browsed}.");
        output.WriteLine("Nitrogen left to the rye where the alfalfa is turned under:");
        foreach (var credit in LegumeCredit.All.Where(c => c.Legume == "alfalfa"))
        {
            output.WriteLine($"  {credit}: {Range(credit.Low, credit.High)} ({credit.Condition})");
        }

        output.Tell(LegumeCredit.Find("kansas-alfalfa").For(LegumeStand.Earlier));
        output.WriteLine("Tennessee credits "
            + $"{string.Join(" and ", Institution.Find("Tennessee").LegumeCredits.Select(c => c.Legume))}.");
    }

    private static string Rates(CropRemoval removal) =>
        string.Join(", ", removal.Nutrients.Select(n => $"{Name(n.Nutrient)} {Range(n.Low, n.High)}"));

    private static string Name(PlantNutrient nutrient) =>
        nutrient switch
        {
            PlantNutrient.Nitrogen => "nitrogen",
            PlantNutrient.Phosphate => "phosphate",
            PlantNutrient.Potash => "potash",
            _ => "sulfur",
        };

    private static string Range(ApplicationRate low, ApplicationRate high) =>
        high > low ? $"{Print(low)} to {Print(high)} lb/ac" : $"{Print(low)} lb/ac";

    private static string Print(ApplicationRate rate) => Amounts.Print(rate.PoundsPerAcre, 0);
}
