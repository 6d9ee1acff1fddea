using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Tests.Nutrients;

public class CropUseTests
{
    [Theory]
    [InlineData(-1)]
    [InlineData(-0.001)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_impossible_yield_is_refused(double perAcre)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CropYield.FromBushelsPerAcre(perAcre));
        Assert.Throws<ArgumentOutOfRangeException>(() => CropYield.FromTonsPerAcre(perAcre));
    }

    [Fact]
    public void A_yield_of_nothing_is_possible() => Assert.Equal("0 bu/ac", default(CropYield).ToString());

    [Fact]
    public void Bushels_of_hay_and_tons_of_grain_are_refused()
    {
        Assert.Throws<ArgumentException>(() => CropUse.CarriedOff(CropRow.Alfalfa, CropYield.FromBushelsPerAcre(4)));
        Assert.Throws<ArgumentException>(() => CropUse.Browsed(CropRow.Corn, CropYield.FromTonsPerAcre(4)));
    }

    [Fact]
    public void An_unknown_row_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => CropUse.Browsed((CropRow)999));

    [Fact]
    public void A_use_reads_as_a_person_would_say_it()
    {
        Assert.Equal("alfalfa, 3.5 ton/ac, carried off", CropUse.CarriedOff(CropRow.Alfalfa, CropYield.FromTonsPerAcre(3.5)).ToString());
        Assert.Equal("deer and turkey food plot, browsed", CropUse.Browsed(CropRow.DeerTurkeyPlot).ToString());
    }
}
