using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Nutrients;

/// <summary>A removal figure of one's own, such as a forage test.</summary>
public class OwnRemovalTests
{
    private static readonly RemovalFigure Hay = RemovalFigure.Stated("clover hay", YieldUnit.Ton, "forage test", (PlantNutrient.Phosphate, 11), (PlantNutrient.Potash, 46));

    /// <summary>By hand: 2 ton x 11 lb and x 46 lb; half of it carried off is half.</summary>
    [Fact]
    public void It_multiplies_like_a_published_one()
    {
        var all = CropRemoval.CarriedOff(Hay, CropYield.FromTonsPerAcre(2));
        Assert.Equal(22, all.Find(PlantNutrient.Phosphate)!.Low.PoundsPerAcre, 1e-9);
        Assert.Equal(92, all.Find(PlantNutrient.Potash)!.High.PoundsPerAcre, 1e-9);
        Assert.Null(all.Find(PlantNutrient.Nitrogen));
        Assert.Equal(46, CropRemoval.CarriedOff(Hay, CropYield.FromTonsPerAcre(2), Fraction.FromPercent(50)).Find(PlantNutrient.Potash)!.Low.PoundsPerAcre, 1e-9);
        Assert.Empty(all.Findings);
        Assert.Equal(2, all.ShowWork().Length);
        Assert.True(Hay.Origin.IsUsersOwn);
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        Assert.Throws<ArgumentException>(() => CropRemoval.CarriedOff(Hay, CropYield.FromBushelsPerAcre(2)));
        Assert.Throws<ArgumentException>(() => RemovalFigure.Stated("hay", YieldUnit.Ton, "test"));
        Assert.Throws<ArgumentException>(() => RemovalFigure.Stated("hay", YieldUnit.Ton, "test", (PlantNutrient.Potash, 1), (PlantNutrient.Potash, 2)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RemovalFigure.Stated("hay", YieldUnit.Ton, "test", (PlantNutrient.Potash, -1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => RemovalFigure.Stated("hay", YieldUnit.Ton, "test", (PlantNutrient.Potash, double.NaN)));
        Assert.Throws<ArgumentException>(() => RemovalFigure.Stated(" ", YieldUnit.Ton, "test", (PlantNutrient.Potash, 1)));
    }
}
