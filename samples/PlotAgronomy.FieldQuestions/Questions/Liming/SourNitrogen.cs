using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Soil;

namespace PlotAgronomy.FieldQuestions.Liming;

/// <summary>Fifty pounds of nitrogen for oats on a sandy loam: what each fertilizer costs, how salty it is beside young roots,
/// and what it takes off the pH.</summary>
internal static class SourNitrogen
{
    private static readonly (string Material, string Acidity, decimal PricePerBag)[] Store =
    [
        ("urea-granular", "urea", 26.00m),
        ("ammonium-sulfate-granular", "ammonium-sulfate", 19.50m),
        ("calcium-nitrate", "calcium-nitrate", 27.00m),
    ];

    internal static void Answer(TextWriter output)
    {
        var nitrogen = ApplicationRate.FromPoundsPerAcre(50);
        var capacity = LimeBufferCapacity.FromThirtyMinutes(160);
        var plow = Length.FromInches(6);
        foreach (var (name, acidity, price) in Store)
        {
            var material = FertilizerMaterial.Find(name);
            var bag = Offer.InBags(FertilizerProduct.FromMaterial(material), Mass.FromPounds(50), price);
            var acid = NitrogenAcidity.For(acidity, nitrogen, AcidityConvention.PlantsTakeUpNitrate);
            output.WriteLine($"{material}: {Currency.FromCode("USD").Print(bag.PricePerPoundOf(PlantNutrient.Nitrogen))} a "
                + $"pound of nitrogen, salt index {Print(material.SaltIndexPerUnitOfNutrient)} a pound of nutrient, "
                + $"{Print(-material.LimeValuePerPoundOfNitrogen)} lb of lime taken up by a pound of nitrogen.");
            output.Tell(acid);
            output.WriteLine("  Without lime the pH of the plow layer falls by "
                + $"{Amounts.Print(acid.PhFall(capacity, plow), 2)} a year.");
        }

        output.WriteLine("If no plant takes the nitrate up, the acid all stays:");
        foreach (var (_, acidity, _) in Store.Take(2))
        {
            var worst = NitrogenAcidity.For(acidity, nitrogen, AcidityConvention.AllAcidStays);
            output.WriteLine($"  {worst.Fertilizer.Replace('-', ' ')}: {Amounts.Print(worst.Carbonate, "lb/ac", 0)} of lime.");
        }

        output.WriteLine($"The table knows: {string.Join(", ", NitrogenAcidity.Fertilizers.Select(f => f.Replace('-', ' ')))}.");
        var potash = FertilizerMaterial.Find("potassium-magnesium-sulfate-langbeinite");
        if (potash.FromMemory(MaterialProperty.SaltIndex) is var (figure, caution))
        {
            output.WriteLine($"For its potash, {potash} has a salt index of {Amounts.Print(figure.Value, 1)}.");
            output.WriteLine(caution);
        }

        if (FertilizerMaterial.Find("triple-superphosphate").AnalysisFromMemory() is var (whole, doubt))
        {
            output.WriteLine($"Triple superphosphate brings calcium too: {whole}. {doubt}");
        }
    }

    private static string Print(double? number) => number is { } known ? Amounts.Print(known, 2) : "not printed";
}
