using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

public class SoilMemoryTests
{
    [Fact]
    public void A_unit_conversion_without_text_allocates_little()
    {
        var reading = SoilReading.FromPrinted(SoilAnalyte.Potassium, 110, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3);
        Assert.InRange(Allocations.BytesOf(() => reading.ConvertTo(SoilTestUnit.PoundsPerAcre, SampledSoil.Conventional)), 0, 1250);
        Assert.InRange(Allocations.BytesOf(() => SampledLayer.FromDepth(Length.FromInches(4))), 0, 310);
    }

    [Fact]
    public void An_exchange_capacity_without_text_allocates_little()
    {
        var report = SoilSamples.Named("P1");
        Assert.InRange(Allocations.BytesOf(() => CationBalance.For(report, AcidityTerm.Clemson)), 0, 9500);
    }

    [Fact]
    public void A_capacity_printed_by_volume_is_a_step_of_its_own()
    {
        var soil = new SampledSoil
        {
            WeightPerVolume = Density.FromGramsPerCubicCentimeter(1.25),
            ExchangeCapacity = CationCharge.FromMilliequivalentsPer100CubicCentimeters(10),
        };
        var reading = SoilReading.FromPrinted(SoilAnalyte.Potassium, 5, SoilTestUnit.PercentSaturation, Extractant.Mehlich3);
        var conversion = reading.ConvertTo(SoilTestUnit.MilliequivalentsPer100Grams, soil);
        Assert.Equal("Charge by weight = charge by volume / g/cm3 = 10 / 1.25 g/cm3 = 8 [DEF-UNITS]", conversion.ShowWork()[0].ToString());
        Assert.Equal(0.4, conversion.Converted.PrintedValue, 1e-12);
    }
}
