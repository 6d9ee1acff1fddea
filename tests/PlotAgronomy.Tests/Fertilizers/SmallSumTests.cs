using PlotAgronomy.Fertilizers;
using PlotAgronomy.Nutrients;
using UnitsNet;

namespace PlotAgronomy.Tests.Fertilizers;

/// <summary>Small sums that need no invented area.</summary>
public class SmallSumTests
{
    /// <summary>By hand: 100 kg N are 217.39 kg of 46-0-0; 800 kg of it hold 368 kg N.</summary>
    [Fact]
    public void A_weight_of_a_nutrient_and_of_its_product()
    {
        var urea = FertilizerAnalysis.FromGrade("46-0-0");
        Assert.Equal(100 / 0.46, urea.MassFor(PlantNutrient.Nitrogen, Mass.FromKilograms(100)).Kilograms, 1e-9);
        Assert.Equal(368, urea.Content(PlantNutrient.Nitrogen, Mass.FromKilograms(800)).Kilograms, 1e-9);
        Assert.Throws<ArgumentException>(() => urea.MassFor(PlantNutrient.Potash, Mass.FromKilograms(1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => urea.MassFor(PlantNutrient.Nitrogen, Mass.FromKilograms(-1)));
    }

    /// <summary>By hand: a bag of 50 lb at 200 lb/ac covers a quarter of an acre.</summary>
    [Fact]
    public void The_area_a_bag_covers()
    {
        Assert.Equal(0.25, ApplicationRate.FromPoundsPerAcre(200).AreaCoveredBy(Mass.FromPounds(50)).Acres, 1e-12);
        Assert.Throws<InvalidOperationException>(() => ApplicationRate.Zero.AreaCoveredBy(Mass.FromPounds(50)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ApplicationRate.FromPoundsPerAcre(200).AreaCoveredBy(Mass.FromPounds(-1)));
    }

    /// <summary>Published: 28 % solution weighs 10.67 lb a gallon at 60 F and so holds 2.99 lb N (Virginia Tech, SPES-199NP); 29.88 lb N are 10 gallons, by hand.</summary>
    [Fact]
    public void The_gallons_of_a_need()
    {
        var analysis = FertilizerAnalysis.FromGrade("28-0-0");
        var liquid = FertilizerProduct.Liquid("solution", analysis, Density.FromPoundsPerUSGallon(10.67));
        Assert.Equal(10, liquid.VolumeOf(analysis.MassFor(PlantNutrient.Nitrogen, Mass.FromPounds(29.876))).UsGallons, 1e-9);
        Assert.Throws<InvalidOperationException>(() => FertilizerProduct.Create("dry", analysis).VolumeOf(Mass.FromPounds(1)));
    }

    /// <summary>Published: banded phosphate counts one and a half times (Connecticut); there and back is the same.</summary>
    [Fact]
    public void Band_to_broadcast_and_back()
    {
        var band = ApplicationRate.FromPoundsPerAcre(40);
        Assert.Equal(60, NutrientNeed.BroadcastPhosphateFor(band).PoundsPerAcre, 1e-12);
        Assert.Equal(40, NutrientNeed.BandedPhosphateFor(NutrientNeed.BroadcastPhosphateFor(band)).PoundsPerAcre, 1e-12);
    }

    /// <summary>Published: 10.90 lb a gallon at 60 F (Virginia Tech, SPES-199NP, table 1).</summary>
    [Fact]
    public void The_30_percent_solution_weighs_what_was_read() =>
        Assert.Equal(10.9, FertilizerMaterial.Find("urea-ammonium-nitrate-solution-30").Figure(MaterialProperty.LiquidDensity)!.Value, 1e-9);
}
