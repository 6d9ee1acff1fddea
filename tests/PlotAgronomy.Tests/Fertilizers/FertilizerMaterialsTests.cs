using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Tests.Support;
using UnitsNet;
using static PlotAgronomy.Tests.Fertilizers.FertilizerShelfTests;

namespace PlotAgronomy.Tests.Fertilizers;

public class FertilizerMaterialsTests
{
    [Fact]
    public void A_figure_from_memory_answers_only_by_name()
    {
        var langbeinite = FertilizerMaterial.Find("potassium-magnesium-sulfate-langbeinite");
        Assert.Null(langbeinite.Figure(MaterialProperty.SaltIndex));
        var (figure, caution) = langbeinite.FromMemory(MaterialProperty.SaltIndex)!.Value;
        Assert.Equal(43.4, figure.Value);
        Assert.Equal("data-from-memory", caution.Code);
        Assert.Null(FertilizerMaterial.Find("urea-granular").FromMemory(MaterialProperty.SaltIndex));
    }

    [Fact]
    public void A_material_from_memory_is_found_only_by_name()
    {
        Assert.DoesNotContain(FertilizerMaterial.All, m => m.Id == "soluble-borate");
        Assert.Contains(FertilizerMaterial.Find("soluble-borate"), FertilizerMaterial.Unchecked);
        Assert.All(FertilizerMaterial.Unchecked, m => Assert.Equal("data-from-memory", m.AnalysisCaution!.Code));
        Assert.All(FertilizerMaterial.All, m => Assert.Null(m.AnalysisCaution));
    }

    [Fact]
    public void Nutrients_from_memory_beside_those_that_were_read_answer_only_by_name()
    {
        var superphosphate = FertilizerMaterial.Find("triple-superphosphate");
        Assert.Equal("0-46-0", superphosphate.Analysis.ToString());
        var (analysis, caution) = superphosphate.AnalysisFromMemory()!.Value;
        Assert.Equal("0-46-0-1S-14Ca", analysis.ToString());
        Assert.Equal("data-from-memory", caution.Code);
        Assert.Equal("0-0-0-28Mn", FertilizerMaterial.Find("manganese-sulfate").Analysis.ToString());
        Assert.Null(FertilizerMaterial.Find("gypsum").AnalysisFromMemory());
        Assert.Equal(FertilizerSubstance.TripleSuperphosphate, Bag("0-46-0-14Ca", 30).Item.Substance);
    }

    /// <summary>The pure compounds by atomic masses: 11.34 and 14.84 % B.</summary>
    [Theory]
    [InlineData("borax", 11.34), InlineData("borate-5-hydrate", 14.84)]
    public void Borates_hold_what_the_pure_compound_holds(string id, double percent) =>
        Assert.Equal(percent, FertilizerMaterial.Find(id).Analysis.Percent(PlantNutrient.Boron), 0.05);

    /// <summary>Often-printed partial salt indexes (memory): urea 1.618, DAP 0.456, potash 1.936, potassium sulfate 0.852.</summary>
    [Theory]
    [InlineData("urea-granular", 1.618), InlineData("diammonium-phosphate", 0.456), InlineData("potassium-chloride-muriate-of-potash", 1.936), InlineData("potassium-sulfate", 0.852)]
    public void Salt_index_per_unit_of_nutrient(string id, double expected) =>
        Assert.Equal(expected, FertilizerMaterial.Find(id).SaltIndexPerUnitOfNutrient!.Value, 0.0015);

    /// <summary>San Joaquin County prints 5.24 lb CaCO3 per lb N for ammonium sulfate and 1.82 for ammonium nitrate; Alabama's table gives 110/21 and 61/34.</summary>
    [Theory]
    [InlineData("ammonium-sulfate-crystal", -5.24, 0.005), InlineData("ammonium-nitrate", -1.82, 0.03), InlineData("calcium-nitrate", 1.29, 0.005)]
    public void Acidity_per_pound_of_nitrogen(string id, double expected, double tolerance) =>
        Assert.Equal(expected, FertilizerMaterial.Find(id).LimeValuePerPoundOfNitrogen!.Value, tolerance);

    [Fact]
    public void No_material_of_the_catalog_is_impossible() =>
        Assert.All(FertilizerMaterial.All, m => m.Analysis.RequirePossibleFor(m.Substance));

    [Fact]
    public void Bagged_grades_are_read()
    {
        Assert.Equal(22, FertilizerAnalysis.BaggedGrades.Length);
        Assert.Contains(FertilizerAnalysis.BaggedGrades, g => g.ToString() == "6-24-24");
    }

    [Fact]
    public void Litter_is_a_range_and_the_rich_lot_needs_least()
    {
        var litter = Manure.Find("poultry-litter-broiler-range");
        Assert.Equal((45, 75), (litter.Nitrogen.Low, litter.Nitrogen.High));
        var rate = litter.ForNitrogen(ApplicationRate.FromPoundsPerAcre(60), NitrogenAvailability.FromPublished(ManureAvailability.Find("any-manure-growing-season")));
        Assert.True(rate.RichLot.Rate < rate.PoorLot.Rate);
        Near.Assert(60, rate.RichLot.AvailableNitrogen.PoundsPerAcre, 1e-9);
        Near.Assert(60, rate.PoorLot.AvailableNitrogen.PoundsPerAcre, 1e-9);
        Assert.Contains(rate.Findings, f => f.Code == "fertilizer-manure-phosphate");
        Assert.Contains(rate.Findings, f => f.Code == "fertilizer-manure-varies");
        Assert.DoesNotContain(litter.ForPhosphate(ApplicationRate.FromPoundsPerAcre(40), PhosphateAvailability.All, NitrogenAvailability.FromFraction(Fraction.One)).Findings, f => f.Code == "fertilizer-manure-phosphate");
        Assert.Throws<ArgumentOutOfRangeException>(() => litter.ForNitrogen(ApplicationRate.Zero, NitrogenAvailability.FromFraction(Fraction.Zero)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Manure.Analyzed("bare", 0, 10, 10).ForNitrogen(ApplicationRate.Zero, NitrogenAvailability.FromFraction(Fraction.One)));
    }

    /// <summary>Hand algebra on Ontario's 40 % of the phosphorus in the first year: 60 lb/ton hold 24 that count, so 50 lb need 2.0833 ton/ac; the row is no
    /// part of nitrogen and is refused there.</summary>
    [Fact]
    public void The_part_of_phosphorus_is_not_the_part_of_nitrogen()
    {
        var lot = Manure.Analyzed("a lot", 60, 60, 55);
        var published = ManureAvailability.Find("any-manure-ontario-p-this-year");
        var rate = lot.ForPhosphate(ApplicationRate.FromPoundsPerAcre(50), PhosphateAvailability.FromPublished(published), NitrogenAvailability.FromFraction(Fraction.FromPercent(50)));
        Assert.Equal(50 / 24.0, rate.RichLot.Rate.ShortTonsPerAcre, 1e-9);
        Assert.Equal(50 / 24.0 * 30, rate.RichLot.AvailableNitrogen.PoundsPerAcre, 1e-9);
        Assert.Contains("60 lb/ton x 0.4 = 24 lb/ton", rate.ShowWork()[0].ToString(), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => NitrogenAvailability.FromPublished(published));
        Assert.Throws<ArgumentException>(() => PhosphateAvailability.FromPublished(ManureAvailability.GrowingSeason));
        Assert.Throws<ArgumentOutOfRangeException>(() => lot.ForPhosphate(ApplicationRate.FromPoundsPerAcre(50), PhosphateAvailability.FromFraction(Fraction.Zero), NitrogenAvailability.FromFraction(Fraction.One)));
    }

    /// <summary>Kansas State's limits scale with the feet of row: 8 lb in 30 in rows is printed as 6 in 40 in and 12 in 20 in.</summary>
    [Theory]
    [InlineData(40, 6), InlineData(20, 12), InlineData(30, 8)]
    public void The_seed_row_limit_goes_with_the_feet_of_row(double inches, double expected)
    {
        var limit = SeedPlacedLimit.All.Single(l => l is { Crop: SeedRowCrop.Corn, Soil: SeedRowSoil.MediumToFine } && l.RowSpacingLow?.Inches == 30);
        Near.Assert(expected, limit.AtRowSpacing(Length.FromInches(inches))!.Limit!.Value.PoundsPerAcre, 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => limit.AtRowSpacing(Length.Zero));
    }

    [Fact]
    public void Some_crops_take_no_fertilizer_at_the_seed()
    {
        var soybean = SeedPlacedLimit.All.Single(l => l.Crop == SeedRowCrop.Soybean);
        Assert.Equal(0, soybean.MostProduct(FertilizerAnalysis.FromGrade("11-52-0"))!.Value.PoundsPerAcre);
        Assert.Null(SeedPlacedLimit.All.First(l => l.Crop == SeedRowCrop.Corn).MostProduct(FertilizerAnalysis.FromGrade("0-46-0")));
        Assert.All(SeedPlacedLimit.All.Where(l => l.Crop is SeedRowCrop.SmallSeededLegumes or SeedRowCrop.Brassicas), l => Assert.Equal(ApplicationRate.Zero, l.Limit));
        Assert.Equal(70, SeedPlacedLimit.All.Single(l => l.Crop == SeedRowCrop.GrainSorghum).PartOfCornLimit!.Value.Percent, 9);
    }

    [Theory]
    [InlineData(49.9, 6.5, 5, 10), InlineData(50, 6.5, 5, 10), InlineData(60, 6.5, 10, 20), InlineData(70, 6.5, 10, 20), InlineData(75, 7.5, 20, 40), InlineData(40, 7.6, 20, 40)]
    public void Planning_loss_of_surface_urea(double fahrenheit, double ph, double low, double high)
    {
        var loss = UreaLoss.PlanningLoss(Temperature.FromDegreesFahrenheit(fahrenheit), ph)!.Value;
        Assert.Equal((low, high), (loss.Low, loss.High));
    }

    [Theory]
    [InlineData(50.1), InlineData(59.9), InlineData(70.1), InlineData(74.9)]
    public void Between_the_printed_classes_practice_names_no_loss(double fahrenheit) =>
        Assert.Null(UreaLoss.PlanningLoss(Temperature.FromDegreesFahrenheit(fahrenheit), 6.5));

    [Theory]
    [InlineData(-0.1), InlineData(14.1), InlineData(double.NaN)]
    public void A_loss_at_an_impossible_pH_is_refused(double ph) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => UreaLoss.PlanningLoss(Temperature.FromDegreesFahrenheit(60), ph));

    [Fact]
    public void Tables_of_trials_and_setbacks_are_read()
    {
        Assert.Equal(13, UreaLoss.Measured.Length);
        Assert.Contains(SetbackRule.Examples, r => r.Distance?.Feet == 16.5);
        Assert.All(UreaLoss.Measured, u => Assert.True(u.LostOfApplied.Low <= u.LostOfApplied.High));
    }

    /// <summary>University of Manitoba and the federal station at Brandon; Montana State University: percent of what was applied.</summary>
    [Theory]
    [InlineData("urea", "25 C, 5 days", 38, 46)]
    [InlineData("urea", "20-25 C (May), 7 days", 40, 40)]
    [InlineData("urea", "30 C (July), 7 days", 88, 88)]
    [InlineData("UAN 28 %", "20-25 C (May), 7 days", 7, 7)]
    [InlineData("UAN 28 %", "30 C (July), 7 days", 50, 50)]
    [InlineData("urea", "semi-arid, pH and moisture varied", 3.1, 31.3)]
    [InlineData("urea", "incl. snow", 13.0, 44.1)]
    [InlineData("urea", "mean of the listed trials", 18.1, 18.1)]
    public void The_loss_of_urea_is_what_the_trials_found(string product, string conditions, double low, double high)
    {
        var trial = UreaLoss.Measured.Single(u => u.Product == product && u.Conditions == conditions);
        Assert.Equal((low, high), (trial.LostOfApplied.Low, trial.LostOfApplied.High));
    }

    [Fact]
    public void Single_products_are_ranked_by_fit()
    {
        var ranked = ProductFit.Rank(Need(40, 80, 80), Bag("13-13-13", 19).Item, Bag("6-24-24", 31).Item, Bag("10-20-20", 25).Item, Bag("46-0-0", 24).Item);
        Assert.Equal("10-20-20", ranked[0].Product.Name);
        Near.Assert(400, ranked[0].Rate.PoundsPerAcre, 1e-9);
        Assert.Equal(0, ranked[0].Miss, 9);
        Assert.Equal("46-0-0", ranked[^1].Product.Name);
        Assert.Throws<ArgumentException>(() => ProductFit.Rank(Need(0, 0, 0), Bag("46-0-0", 1).Item));
    }
}
