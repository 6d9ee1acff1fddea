using PlotAgronomy.Fertilizers;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Every worked sum, each row its own test with its publication beside it.</summary>
public class FertilizerWorkedSums
{
    private const string File = "Fertilizers/worked-sums.csv";

    public static TheoryData<string> Ids => WorkedExamples.Ids(File);

    [Theory, MemberData(nameof(Ids))]
    public void Matches_the_source(string id)
    {
        var row = WorkedExamples.Find(File, id);
        WorkedExamples.AssertMatches(row, Actual(row, row.Text("topic")));
    }

    private static double Actual(CsvRow row, string topic) => topic switch
    {
        "rate-per-1000" => Analysis(row).RateFor(Nutrient(row), Per1000(row)).PoundsPerThousandSquareFeet,
        "plot" => Analysis(row).RateFor(Nutrient(row), Per1000(row)).Over(Plot(row)).Pounds,
        "plot-at-rate" => ApplicationRate.FromPoundsPerAcre(row.Number("amount")).Over(Plot(row)).Pounds,
        "content" => Analysis(row).Content(Nutrient(row), Mass.FromPounds(row.Number("amount"))).Pounds,
        "product" or "rate" => Analysis(row).RateFor(Nutrient(row), PerAcre(row)).PoundsPerAcre,
        "acre-from-1000" => Per1000(row).PoundsPerAcre,
        "bags" => Analysis(row).RateFor(Nutrient(row), Per1000(row)).Over(Plot(row)).Pounds / row.Number("package_lb"),
        "nearest-packages" => Package.RoundToNearest(Mass.FromPounds(Analysis(row).RateFor(Nutrient(row), PerAcre(row)).PoundsPerAcre), Mass.FromPounds(row.Number("package_lb"))),
        "coverage-ft2" => 1000 * row.Number("package_lb") / Analysis(row).RateFor(Nutrient(row), Per1000(row)).PoundsPerThousandSquareFeet,
        "price" => (double)Product(row).PricePerPoundOf(Nutrient(row)),
        "residual-after-nitrogen" => (double)Product(row).PricePerPoundOf(Nutrient(row), (PlantNutrient.Nitrogen, (decimal)row.Number("amount"))),
        "residual-left-after-nitrogen" => (double)Product(row).PricePerPoundOf(Nutrient(row), (PlantNutrient.Nitrogen, (decimal)row.Number("amount")))
            * Analysis(row).Content(Nutrient(row), Mass.FromPounds(row.Number("package_lb"))).Pounds,
        "gallons-bring" => row.Number("amount") * Analysis(row).ContentPerGallon(Nutrient(row), Liquid(row)).Pounds,
        "gallons" => Analysis(row).LiquidFor(Nutrient(row), PerAcre(row), Liquid(row), Plot(row)).UsGallons,
        "per-gallon" => Analysis(row).ContentPerGallon(Nutrient(row), Liquid(row)).Pounds,
        "ounces-per-1000" => Ounces(PoundsAndOunces.Nearest(Mass.FromPounds(PerAcre(row).PoundsPerThousandSquareFeet))),
        "blend" => Blended(row),
        "blend-highest" => 20 * Blend(row, row.Text("materials")).HighestPercentOfWanted!.Value / 100,
        "blend-weight" => 100 * row.Number("package_lb") / Blend(row, row.Text("materials")).HighestPercentOfWanted!.Value,
        "mix-of-equal-weights" => GradeMix.GradeOf([.. row.Text("grade").Split('+').Select(g => (FertilizerAnalysis.FromGrade(g), Mass.FromPounds(50)))]).Percent(Nutrient(row)),
        "element" => Nutrient(row) == PlantNutrient.Phosphate ? ElementalAnalysis.FromLabel(Analysis(row)).PhosphorusPercent : ElementalAnalysis.FromLabel(Analysis(row)).PotassiumPercent,
        "oxide-of-phosphorus" => ElementalAnalysis.FromPercent(0, row.Number("amount"), 0).ToLabel().Percent(PlantNutrient.Phosphate),
        "content-published-factor" => PublishedElement(row),
        "pure" => 100 * ChemicalConversion.ExactFactor(row.Choice<ChemicalForm>("materials"), ChemicalForm.Nitrogen),
        "pure-content" => row.Number("amount") * ChemicalConversion.ExactFactor(row.Choice<ChemicalForm>("materials"), ChemicalForm.Nitrogen),
        "acidity" => NitrogenAcidity.For(row.Text("materials"), PerAcre(row), AcidityConvention.PlantsTakeUpNitrate).Carbonate.PoundsPerAcre,
        "seed-row-product" => Corn30().MostProduct(Analysis(row))!.Value.PoundsPerAcre,
        "seed-row-gallons" => Corn30().MostProduct(Analysis(row))!.Value.PoundsPerAcre / row.Number("density_lb_per_gal"),
        "label-index" => LabelIndex.For(Analysis(row), FertilizerAnalysis.FromPercent(10.1, 10.2, 10.1), 3, 2, 1).Percent,
        _ => ManureAnswer(topic),
    };

    private static double ManureAnswer(string topic)
    {
        var litter = Manure.Analyzed("litter", 56, 53, 46);
        var half = NitrogenAvailability.FromFraction(Fraction.FromPercent(50));
        var byNitrogen = litter.ForNitrogen(ApplicationRate.FromPoundsPerAcre(60), half).RichLot;
        var byPhosphate = litter.ForPhosphate(ApplicationRate.FromPoundsPerAcre(40), PhosphateAvailability.All, half).PoorLot;
        return topic switch
        {
            "manure-n-tons" => byNitrogen.Rate.ShortTonsPerAcre,
            "manure-n-phosphate" => byNitrogen.Phosphate.PoundsPerAcre,
            "manure-n-potash" => byNitrogen.Potash.PoundsPerAcre,
            "manure-p-tons" => byPhosphate.Rate.ShortTonsPerAcre,
            "manure-p-nitrogen" => byPhosphate.AvailableNitrogen.PoundsPerAcre,
            "manure-p-potash" => byPhosphate.Potash.PoundsPerAcre,
            _ => throw new InvalidOperationException($"No sum for {topic}."),
        };
    }

    private static double Blended(CsvRow row)
    {
        string[] parts = row.Text("materials").Split('>');
        var blend = Blend(row, parts[0]);
        Assert.True(blend.CanBeMade);
        return parts[1] == "filler" ? blend.Filler.Pounds : parts[1] == "materials" ? blend.Lines.Sum(l => l.Mass.Pounds) : blend.Lines.Single(l => l.Material.Name == parts[1]).Mass.Pounds;
    }

    private static GradeMix Blend(CsvRow row, string materials) =>
        GradeMix.For(Analysis(row), Mass.FromPounds(row.Number("package_lb")), [.. materials.Split(';').Select(g => FertilizerShelfTests.Bag(g, 0))]);

    private static double PublishedElement(CsvRow row)
    {
        double oxide = Analysis(row).Content(Nutrient(row), Mass.FromPounds(row.Number("amount"))).Pounds;
        return oxide * (Nutrient(row) == PlantNutrient.Phosphate
            ? ChemicalConversion.PublishedFactor(ChemicalForm.Phosphate, ChemicalForm.Phosphorus, Source.Find("FERT-LIB"))
            : ChemicalConversion.PublishedFactor(ChemicalForm.Potash, ChemicalForm.Potassium, Source.Find("FERT-LIB")));
    }

    private static SeedPlacedLimit Corn30() => SeedPlacedLimit.All.Single(l => l.Crop == SeedRowCrop.Corn && l.Soil == SeedRowSoil.MediumToFine && l.RowSpacingLow?.Inches == 30);

    private static double Ounces(PoundsAndOunces weight) => (16 * weight.Pounds) + weight.Ounces;

    private static FertilizerAnalysis Analysis(CsvRow row) => FertilizerAnalysis.FromGrade(row.Text("grade"));

    private static PlantNutrient Nutrient(CsvRow row) => row.Choice<PlantNutrient>("nutrient");

    private static ApplicationRate Per1000(CsvRow row) => ApplicationRate.FromPoundsPerThousandSquareFeet(row.Number("amount"));

    private static ApplicationRate PerAcre(CsvRow row) => ApplicationRate.FromPoundsPerAcre(row.Number("amount"));

    private static Area Plot(CsvRow row) => Area.FromSquareFeet(row.Number("area_ft2"));

    private static Density Liquid(CsvRow row) => Density.FromPoundsPerUSGallon(row.Number("density_lb_per_gal"));

    private static Offer<FertilizerProduct> Product(CsvRow row) =>
        Offer.InBags(FertilizerProduct.Create("product", Analysis(row)), Mass.FromPounds(row.Number("package_lb")), (decimal)row.Number("price"));
}
