using PlotAgronomy.Land;
using PlotAgronomy.Plots;
using PlotAgronomy.Seeds;
using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Plots;

public class PlotSoilTests
{
    private static readonly SoilReport Bare = new() { Laboratory = "North Carolina" };

    private static readonly SoilReport Full = new()
    {
        Laboratory = "North Carolina",
        SoilClass = SoilClass.Mineral,
        Texture = SoilTexture.SandyLoam,
        PrintedExchangeCapacity = CationCharge.FromMilliequivalentsPer100CubicCentimeters(6),
        WaterPh = WaterPh.FromValue(5.6),
        WeightPerVolume = Density.FromGramsPerCubicCentimeter(1.2),
        SampledDepth = Length.FromInches(4),
    };

    private static readonly Plot Hollow = new()
    {
        Name = "Hollow field",
        Measured = PlotArea.Stated(Area.FromAcres(0.62)),
        SoilClass = SoilClass.Organic,
        Texture = SoilTexture.Clay,
        Drainage = DrainageClass.Poor,
        IsDryOrThin = true,
        SoilRegion = SoilRegion.Piedmont,
        PhosphorusSupply = SoilSupply.High,
        ExchangeCapacityGroup = SoilSupply.Low,
    };

    [Fact]
    public void A_report_alone_is_a_soil_and_what_it_does_not_say_is_not_known()
    {
        var soil = PlotSoil.For(Full);
        Assert.Same(Full, soil.Report);
        Assert.Equal(SoilTexture.SandyLoam, soil.Texture);
        Assert.Equal(SoilClass.Mineral, soil.SoilClass);
        Assert.Equal(5.6, soil.WaterPh!.Value);
        Assert.Equal(4, soil.Layer!.Depth.Inches, 1e-9);
        Assert.Equal(1.2, soil.WeightPerVolume!.Value.GramsPerCubicCentimeter, 1e-9);
        Assert.Null(soil.Drainage);
        Assert.Null(soil.Region);

        var unknown = PlotSoil.For(Bare);
        Assert.Null(unknown.Texture);
        Assert.Null(unknown.SoilClass);
        Assert.Null(unknown.ExchangeCapacity);
        Assert.Null(unknown.WaterPh);
        Assert.Null(unknown.Layer);
        Assert.Null(unknown.WeightPerVolume);
        Assert.Null(unknown.TextureBy);
        Assert.Null(unknown.SoilClassBy);
        Assert.Null(unknown.ExchangeCapacityBy);
        Assert.Null(unknown.WaterPhBy);
    }

    [Fact]
    public void What_the_laboratory_printed_goes_before_what_eyes_saw()
    {
        var both = PlotSoil.For(Full, Hollow);
        Assert.Equal(SoilTexture.SandyLoam, both.Texture);
        Assert.Equal(SoilWitness.Laboratory, both.TextureBy);
        Assert.Equal(SoilClass.Mineral, both.SoilClass);
        Assert.Equal(SoilWitness.Laboratory, both.SoilClassBy);
        Assert.Equal(SoilWitness.Laboratory, both.ExchangeCapacityBy);
        Assert.Equal(SoilWitness.Laboratory, both.WaterPhBy);

        var seen = PlotSoil.For(Bare, Hollow);
        Assert.Equal(SoilTexture.Clay, seen.Texture);
        Assert.Equal(SoilWitness.OwnEyes, seen.TextureBy);
        Assert.Equal(SoilClass.Organic, seen.SoilClass);
        Assert.Equal(SoilWitness.OwnEyes, seen.SoilClassBy);
        Assert.Equal(DrainageClass.Poor, seen.Drainage);
        Assert.True(seen.IsDryOrThin);
        Assert.Same(SoilRegion.Piedmont, seen.Region);
        Assert.Equal(SoilSupply.High, seen.PhosphorusSupply);
        Assert.Equal(SoilSupply.Low, seen.ExchangeCapacityGroup);
    }

    [Fact]
    public void A_soil_can_be_varied_and_then_somebody_else_says_so()
    {
        var soil = PlotSoil.For(Full);
        var own = soil with { WaterPh = WaterPh.FromValue(6.1), ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(9) };
        Assert.Equal(6.1, own.WaterPh!.Value);
        Assert.Equal(SoilWitness.OwnEyes, own.WaterPhBy);
        Assert.Equal(SoilWitness.OwnEyes, own.ExchangeCapacityBy);
        Assert.Equal(SoilWitness.Laboratory, own.TextureBy);
        Assert.NotEqual(soil, soil with { });
        Assert.Equal(soil, soil);
        Assert.Equal(5.6, soil.WaterPh!.Value);
    }

    [Fact]
    public void Exchange_capacity_by_volume_counts_by_weight_where_the_weight_is_known()
    {
        // 6 meq/100 cm3 at 1.2 g/cm3 is 5 meq/100 g.
        Assert.Equal(5, PlotSoil.For(Full).CapacityPer100Grams!.Value, 1e-9);
        Assert.Null(PlotSoil.For(Full with { WeightPerVolume = null }).CapacityPer100Grams);
    }

    [Fact]
    public void It_refuses_what_cannot_be()
    {
        var soil = PlotSoil.For(Full);
        Assert.Throws<ArgumentNullException>(() => PlotSoil.For(null!));
        Assert.Throws<ArgumentNullException>(() => PlotSoil.For(Full, null!));
        Assert.Throws<ArgumentOutOfRangeException>(() => soil with { SoilClass = (SoilClass)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => soil with { Texture = (SoilTexture)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => soil with { Drainage = (DrainageClass)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => soil with { PhosphorusSupply = (SoilSupply)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => soil with { ExchangeCapacityGroup = (SoilSupply)99 });
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void It_reads_alike_everywhere(string culture)
    {
        using (new CultureScope(culture))
        {
            Assert.Equal("sandy loam, mineral, water pH 5.6", PlotSoil.For(Full).ToString());
            Assert.Equal("soil of which nothing is known", PlotSoil.For(Bare).ToString());
            Assert.Equal("Hollow field, 0.62 ac", Hollow.ToString());
        }
    }
}
