using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Reference;
using UnitsNet;
using static PlotAgronomy.Record.Sums.Given;

namespace PlotAgronomy.Record.Sums;

/// <summary>Analyses, chemistry, catalogs, prices, blends to a grade, rates of one product, manure and urea.</summary>
internal static class FertilizersSums
{
    private static readonly string[] Grades =
    [
        "46-0-0", "21-0-0-24S", "18-46-0", "0-46-0", "0-0-60", "13-13-13", "6-24-24", "0-0-22-22S-11Mg", "0-0-0-14.8B",
    ];

    internal static void Record(Recorder recorder)
    {
        Analyses(recorder);
        Chemistry(recorder);
        Materials(recorder);
        Mixing(recorder);
        Manures(recorder);
        SeedRow(recorder);
        Urea(recorder);
        Rates(recorder);
        GradeBlends(recorder);
        ShelfSums.Record(recorder);
    }

    internal static FertilizerAnalysis Grade(string grade) => FertilizerAnalysis.FromGrade(grade);

    internal static Offer<FertilizerProduct> Bag(string grade, decimal price, double pounds = 50) =>
        Offer.InBags(FertilizerProduct.Create(grade, Grade(grade)), Pounds(pounds), price);

    internal static PlotNeed Need(double nitrogen, double phosphate, double potash, double? most = null) => PlotNeed.Stated(
        Target(PlantNutrient.Nitrogen, nitrogen, most),
        Target(PlantNutrient.Phosphate, phosphate),
        Target(PlantNutrient.Potash, potash));

    internal static NutrientTarget Target(PlantNutrient nutrient, double atLeast, double? atMost = null) =>
        NutrientTarget.Create(nutrient, PerAcre(atLeast), atMost is { } most ? PerAcre(most) : null, "stated");

    private static FertilizerMaterial Material(string id) => FertilizerMaterial.Find(id);

    private static Dictionary<string, object?> Percents(FertilizerAnalysis analysis) =>
        analysis.Holds.ToDictionary(n => Words(n), n => (object?)analysis.Percent(n));

    private static void Analyses(Recorder recorder)
    {
        foreach (string text in new[] { "13-13-13", "0-0-22-22S-11Mg", "10.5 - 34 - 0", "46-0-0-0", "60-60-0", "13-13", "",
            "a-b" })
        {
            recorder.Call($"fertilizer: the label '{text}' read", () =>
                FertilizerAnalysis.TryRead(text, out var read, out _) ? Percents(read!) : "not read");
            recorder.Call($"fertilizer: the grade '{text}'", () => Percents(Grade(text)));
        }

        recorder.Call("fertilizer: an analysis from percents", () => Percents(FertilizerAnalysis.FromPercent(10, 20, 5)));
        recorder.Call("fertilizer: an analysis above all", () => Percents(FertilizerAnalysis.FromPercent(60, 60, 5)));
        recorder.Call("fertilizer: an analysis with sulfur", () =>
            Percents(FertilizerAnalysis.FromPercent(10, 20, 5).With(PlantNutrient.Sulfur, 8)));
        recorder.Call("fertilizer: what an analysis holds", () => Grade("0-0-22-22S-11Mg").Holds);
        foreach (var substance in Enum.GetValues<FertilizerSubstance>())
        {
            recorder.Call($"fertilizer: grades that cannot be {Words(substance)}", () =>
                Grades.Select(g => Refused(g, substance)));
        }

        recorder.Call("fertilizer: elements of a label", () => ElementalAnalysis.FromLabel(Grade("13-13-13")));
        recorder.Call("fertilizer: elements given", () => ElementalAnalysis.FromPercent(13, 5.7, 10.8));
        recorder.Call("fertilizer: a label from elements", () => Percents(ElementalAnalysis.FromPercent(13, 5.7, 10.8).ToLabel()));
    }

    private static bool Refused(string grade, FertilizerSubstance substance)
    {
        try
        {
            Grade(grade).RequirePossibleFor(substance);
            return false;
        }
        catch (ArgumentException)
        {
            return true;
        }
    }

    private static void Chemistry(Recorder recorder)
    {
        var forms = Enum.GetValues<ChemicalForm>();
        foreach (var from in forms)
        {
            recorder.Call($"chemistry: molar mass of {Words(from)}", () => ChemicalFormula.Of(from).MolarMass);
            foreach (var to in forms)
            {
                recorder.Call($"chemistry: from {Words(from)} to {Words(to)}", () => ChemicalConversion.ExactFactor(from, to));
            }
        }

        foreach (var source in new[] { "FERT-H120", "FERT-LIB" }.Select(Source.Find))
        {
            recorder.Call($"chemistry: phosphorus to phosphate printed by {source.Id}", () =>
                ChemicalConversion.PublishedFactor(ChemicalForm.Phosphorus, ChemicalForm.Phosphate, source));
            recorder.Call($"chemistry: phosphate to phosphorus printed by {source.Id}", () =>
                ChemicalConversion.PublishedFactor(ChemicalForm.Phosphate, ChemicalForm.Phosphorus, source));
            recorder.Call($"chemistry: potash to potassium printed by {source.Id}", () =>
                ChemicalConversion.PublishedFactor(ChemicalForm.Potash, ChemicalForm.Potassium, source));
        }
    }

    private static void Materials(Recorder recorder)
    {
        foreach (string id in FertilizerMaterial.All.Select(m => m.Id))
        {
            string name = $"fertilizer material {id}";
            var material = Material(id);
            recorder.Add(name, "", material);
            recorder.Add($"{name}: percents", "", Percents(material.Analysis));
            recorder.Call($"{name}: percents from memory", () =>
                material.AnalysisFromMemory() is var (analysis, _) ? Percents(analysis) : null);
            foreach (var property in Enum.GetValues<MaterialProperty>())
            {
                recorder.Add(name, property.ToString(), material.Figure(property));
                recorder.Call($"{name}: {Words(property)} from memory", () => material.FromMemory(property));
            }

            recorder.Call($"{name}: a bag", () => Offer.InBags(FertilizerProduct.FromMaterial(material), Pounds(50), 24.5m));
        }

        foreach (string id in new[] { "phosphate-rock-ground", "soluble-borate", "urea-granular", "none" })
        {
            recorder.Call($"fertilizer material {id} asked from memory", () => FertilizerMaterial.Find(id));
        }

        recorder.Call("fertilizer: grades sold in bags", () => FertilizerAnalysis.BaggedGrades.Select(Percents));
    }

    private static void Mixing(Recorder recorder)
    {
        var substances = Enum.GetValues<FertilizerSubstance>();
        recorder.Call("fertilizer: mixing rules", () => MixCompatibility.All.Length);
        foreach (var first in substances)
        {
            foreach (var second in substances.Where(s => s > first))
            {
                string name = $"fertilizer: {Words(first)} mixed with {Words(second)}";
                recorder.Call(name, () => MixCompatibility.Between(first, second));
                recorder.Call($"{name}, cautions", () => MixCompatibility.Cautions([second, first]));
            }
        }
    }

    private static void Manures(Recorder recorder)
    {
        Manure[] all = [.. Manure.All.AddRange(Manure.Unchecked).Select(m => Manure.Find(m.Id)), Manure.Analyzed("own litter", 56, 53, 46)];
        foreach (var manure in all)
        {
            recorder.Add($"manure {manure.Name}", "", manure);
            foreach (double percent in new[] { 25.0, 50, 100 })
            {
                recorder.Call($"manure {manure.Name}: 60 lb/ac of nitrogen, {percent} percent of it available", () =>
                    manure.ForNitrogen(PerAcre(60), NitrogenAvailability.FromFraction(Percent(percent))));
                recorder.Call($"manure {manure.Name}: 40 lb/ac of phosphate, {percent} percent of it available", () =>
                    manure.ForPhosphate(PerAcre(40), PhosphateAvailability.All, NitrogenAvailability.FromFraction(Percent(percent))));
            }
        }

        foreach (string id in ManureAvailability.All.AddRange(ManureAvailability.Unchecked).Select(a => a.Id))
        {
            recorder.Add($"manure availability {id}", "", ManureAvailability.Find(id));
        }

        recorder.Call("manure: pounds in a ton", () => PoundsPerTonRange.Between(10, 20));
        recorder.Call("manure: equal ranges", () => new[]
        {
            PoundsPerTonRange.Between(1, 2) == PoundsPerTonRange.Between(1, 2), PoundsPerTonRange.Between(1, 2) != PoundsPerTonRange.Between(1, 2),
        });
    }

    private static string SeedRowCropWords(SeedRowCrop crop) => crop switch
    {
        SeedRowCrop.SmallSeededLegumes => "small-seeded legumes",
        SeedRowCrop.DryBean => "dry bean",
        SeedRowCrop.GrainSorghum => "grain sorghum",
        _ => crop.ToString().ToLowerInvariant(),
    };

    private static void SeedRow(Recorder recorder)
    {
        int row = 0;
        foreach (var limit in SeedPlacedLimit.All)
        {
            string name = $"seed row limit {++row}, {SeedRowCropWords(limit.Crop)}";
            recorder.Add(name, "", limit);
            foreach (double inches in new[] { 7.5, 15, 20, 30, 40 })
            {
                recorder.Call($"{name}: in rows of {inches} in", () => limit.AtRowSpacing(Inches(inches)));
            }

            recorder.Call($"{name}: most product", () => Grades.ToDictionary(g => g, g => limit.MostProduct(Grade(g))));
        }

        recorder.Call("fertilizer: setback rules", () => SetbackRule.Examples.Select(r => (r.Rule, r.Distance, r.Source.Id)));
    }

    private static void Urea(Recorder recorder)
    {
        recorder.Call("fertilizer: urea lost in trials", () => UreaLoss.Measured);
        foreach (double fahrenheit in new[] { 35, 50, 65, 80.0, 95 })
        {
            foreach (double ph in new[] { 5.5, 6.8, 7.6 })
            {
                recorder.Call($"fertilizer: urea lost at {fahrenheit} F on pH {ph}", () =>
                    UreaLoss.PlanningLoss(Fahrenheit(fahrenheit), ph));
            }
        }

        recorder.Call("fertilizer: equal percent ranges", () =>
        {
            var measured = UreaLoss.Measured.Select(u => u.LostOfApplied).ToList();
            return new[] { measured[0] == measured[0], measured[0] != measured[^1] };
        });
    }

    private static void Rates(Recorder recorder)
    {
        var liquid = Density.FromPoundsPerUSGallon(10.67);
        foreach (string grade in Grades)
        {
            foreach (var nutrient in Grade(grade).Holds)
            {
                string name = $"fertilizer {grade}: {Words(nutrient)}";
                recorder.Call($"{name} for 40 lb/ac", () => Grade(grade).RateFor(nutrient, PerAcre(40)));
                recorder.Call($"{name} brought by 300 lb/ac", () => Grade(grade).Brings(nutrient, PerAcre(300)));
                recorder.Call($"{name} in 50 lb", () => Grade(grade).Content(nutrient, Pounds(50)));
                recorder.Call($"{name} in a gallon", () => Grade(grade).ContentPerGallon(nutrient, liquid));
                recorder.Call($"{name}, gallons for 40 lb/ac", () =>
                    Grade(grade).LiquidFor(nutrient, PerAcre(40), liquid, Acres(0.62)));
                recorder.Call($"{name}, price of a pound", () => Bag(grade, 24.5m).PricePerPoundOf(nutrient));
                recorder.Call($"{name}, price left after the others", () => Bag(grade, 24.5m).PricePerPoundOf(nutrient, [.. Grade(grade).Holds.Where(n => n != nutrient).Select(n => (n, 0.31m))]));
            }

            recorder.Call($"fertilizer {grade}: none of a nutrient it lacks", () =>
                Grade(grade).RateFor(PlantNutrient.Copper, PerAcre(1)));
            recorder.Call($"fertilizer {grade}: price of a pound of product", () =>
                Bag(grade, 24.5m).PricePerPound);
            recorder.Call($"fertilizer {grade}: a bag", () => Bag(grade, 24.5m));
            recorder.Call($"fertilizer {grade}: meeting all needs", () =>
                SingleProductRate.MeetingAll(Grade(grade), Need(60, 40, 80)));
            recorder.Call($"fertilizer {grade}: passing no need", () =>
                SingleProductRate.PassingNone(Grade(grade), Need(60, 40, 80, 70)));
        }

        recorder.Call("fertilizer: a jug", () =>
            FertilizerProduct.Liquid("solution", Grade("28-0-0"), liquid).InJugs(Volume.FromUsGallons(2.5), 20));
        recorder.Call("fertilizer: a bag of a named substance", () =>
            Offer.InBags(FertilizerProduct.Create("borate", Grade("0-0-0-14.8B"), FertilizerSubstance.Borate), Pounds(50), 40));
        foreach (double pounds in new[] { 0, 0.96875, 2.2957, 17.999 })
        {
            recorder.Call($"fertilizer: {pounds} lb on a kitchen scale", () => PoundsAndOunces.Nearest(Pounds(pounds)));
        }

        recorder.Call("fertilizer: equal weights of a kitchen scale", () => new[]
        {
            PoundsAndOunces.Nearest(Pounds(2)) == PoundsAndOunces.Nearest(Pounds(2.001)),
            PoundsAndOunces.Nearest(Pounds(2)) != PoundsAndOunces.Nearest(Pounds(3)),
        });
        recorder.Call("fertilizer: what a bag is worth by its true content", () =>
            LabelIndex.For(Grade("10-10-10"), FertilizerAnalysis.FromPercent(9.6, 10.2, 9.1), 3, 2, 1));
    }

    private static void GradeBlends(Recorder recorder)
    {
        Offer<FertilizerProduct>[] materials = [Bag("46-0-0", 24), Bag("18-46-0", 36), Bag("0-0-60", 26)];
        foreach (string grade in new[] { "13-13-13", "6-24-24", "19-19-19", "20-20-20", "0-0-60", "10-20-20-5S", "35-0-0" })
        {
            recorder.Call($"fertilizer: a blend to {grade}", () => GradeMix.For(Grade(grade), Pounds(2000), materials));
            recorder.Call($"fertilizer: a blend to {grade}, without urea", () =>
                GradeMix.For(Grade(grade), Pounds(2000), materials[1..]));
        }

        recorder.Call("fertilizer: grade of a mix", () =>
            Percents(GradeMix.GradeOf((Grade("46-0-0"), Pounds(100)), (Grade("0-0-60"), Pounds(250)))));
        recorder.Call("fertilizer: label grade of a mix", () =>
            Percents(GradeMix.LabelGrade(FertilizerAnalysis.FromPercent(13.14, 0, 42.86))));
    }
}
