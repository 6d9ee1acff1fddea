using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.FieldQuestions.Fertilizers;

/// <summary>No store nearby bags 8-20-24. A club mixes a hundred pounds of it from straights, weighs in whole pounds and
/// ounces, and holds a state laboratory's analysis of last year's lot against its label.</summary>
internal static class OwnGrade
{
    internal static void Answer(TextWriter output)
    {
        var wanted = FertilizerAnalysis.FromGrade("8-20-24");
        string sold = FertilizerAnalysis.BaggedGrades.Any(g => g.ToString() == wanted.ToString()) ? "is" : "is not";
        output.WriteLine($"{wanted} {sold} among the {FertilizerAnalysis.BaggedGrades.Length} grades that are often bagged.");
        var mix = GradeMix.For(
            wanted,
            Mass.FromPounds(100),
            Bag("urea", "46-0-0", 27.50m),
            Bag("diammonium phosphate", "18-46-0", 36.00m),
            Bag("potash", "0-0-60", 29.00m));
        foreach (var line in mix.Lines)
        {
            output.WriteLine($"Weigh {PoundsAndOunces.Nearest(line.Mass)} of {line.Material.Name}.");
        }

        output.WriteLine($"Filler: {PoundsAndOunces.Nearest(mix.Filler)}.");
        output.Warn(mix.Findings);

        // Three pounds of the potash were left in the bag.
        var (filler, left) = (FertilizerAnalysis.FromPercent(0, 0, 0), Mass.FromPounds(3));
        var poured = mix.Lines.Select(l => (l.Material.Analysis, l.Material.Name == "potash" ? l.Mass - left : l.Mass));
        var heap = GradeMix.GradeOf([(filler, mix.Filler), .. poured]);
        output.WriteLine($"Three pounds short of potash, the heap is {Percents(heap)}; a label could say "
            + $"{GradeMix.LabelGrade(heap)}.");
        output.WriteLine("Twelve pounds of phosphate are in "
            + $"{PoundsAndOunces.Nearest(wanted.MassFor(PlantNutrient.Phosphate, Mass.FromPounds(12)))} of {wanted}.");

        var elements = ElementalAnalysis.FromLabel(wanted);
        output.WriteLine($"As elements {wanted} is {Amounts.Print(elements.NitrogenPercent, 1)} % N, "
            + $"{Amounts.Print(elements.PhosphorusPercent, 1)} % P and {Amounts.Print(elements.PotassiumPercent, 1)} % K; an "
            + $"imported bag of 8 % N, 9 % P and 20 % K is {Percents(ElementalAnalysis.FromPercent(8, 9, 20).ToLabel())} "
            + "here.");

        var found = FertilizerAnalysis.FromPercent(7.6, 20.3, 22.9);
        var index = LabelIndex.For(wanted, found, nitrogenValue: 0.62m, phosphateValue: 0.58m, potashValue: 0.47m);
        output.WriteLine($"Last year's lot was found at {Percents(found)}: {index}.");
        output.WriteLine(index.Caution);
    }

    private static Offer<FertilizerProduct> Bag(string name, string grade, decimal price) =>
        Offer.InBags(FertilizerProduct.Create(name, FertilizerAnalysis.FromGrade(grade)), Mass.FromPounds(50), price);

    private static string Percents(FertilizerAnalysis analysis) =>
        string.Join("-", new[] { PlantNutrient.Nitrogen, PlantNutrient.Phosphate, PlantNutrient.Potash }
            .Select(n => Amounts.Print(analysis.Percent(n), 1)));
}
