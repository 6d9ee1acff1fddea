using PlotAgronomy.Fertilizers;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>What is found by an id, and the words of the room.</summary>
public class FertilizerCatalogTests
{
    [Fact]
    public void Materials_from_memory_stand_apart()
    {
        Assert.Equal((38, 2), (FertilizerMaterial.All.Length, FertilizerMaterial.Unchecked.Length));
        Assert.Equal(
            ["46-0-0", "11-52-0", "18-46-0", "0-46-0"],
            new[] { FertilizerMaterial.Find("urea-granular"), FertilizerMaterial.Find("monoammonium-phosphate"), FertilizerMaterial.Find("diammonium-phosphate"), FertilizerMaterial.Find("triple-superphosphate") }
                .Select(m => m.Analysis.ToString()));
        Assert.Equal(FertilizerSubstance.PotassiumChloride, FertilizerMaterial.Find("potassium-chloride-muriate-of-potash").Substance);
        Assert.Equal(FertilizerSubstance.AmmoniumSulfate, FertilizerMaterial.Find("ammonium-sulfate-granular").Substance);
    }

    [Fact]
    public void An_unknown_id_names_those_there_are()
    {
        Assert.False(FertilizerMaterial.TryFind(null, out _, out string material));
        Assert.Contains("urea-granular", material, StringComparison.Ordinal);
        Assert.False(Manure.TryFind("guano", out _, out string manure));
        Assert.Contains("poultry-layer-moist", manure, StringComparison.Ordinal);
        Assert.False(ManureAvailability.TryFind("never", out _, out string availability));
        Assert.Contains("any-manure-growing-season", availability, StringComparison.Ordinal);
    }

    [Fact]
    public void Manures_and_their_availability_were_all_read()
    {
        Assert.Empty(Manure.Unchecked);
        Assert.Empty(ManureAvailability.Unchecked);
        Assert.True(Manure.TryFind("Poultry-Litter-Broiler-Range", out var litter, out string problem));
        Assert.Equal((Manure.Find("poultry-litter-broiler-range"), ""), (litter, problem));
        Assert.Same(ManureAvailability.GrowingSeason, ManureAvailability.Find("any-manure-growing-season"));
        Assert.NotSame(Manure.Find("poultry-litter-broiler-range"), Manure.Find("poultry-litter-turkey-range"));
    }

    [Theory]
    [InlineData("p2o5", PlantNutrient.Phosphate), InlineData("Cl", PlantNutrient.Chlorine), InlineData("Xx", null)]
    public void A_symbol_of_a_tag_is_read_in_any_case(string symbol, PlantNutrient? nutrient) =>
        Assert.Equal(nutrient, PlantNutrients.WithSymbol(symbol));

    [Fact]
    public void Messages_speak_of_compounds_in_words()
    {
        var problem = Assert.Throws<ArgumentOutOfRangeException>(() => FertilizerAnalysis.FromGrade("36-0-0").RequirePossibleFor(FertilizerSubstance.AmmoniumNitrate));
        Assert.Contains("no ammonium nitrate holds more", problem.Message, StringComparison.Ordinal);
    }
}
