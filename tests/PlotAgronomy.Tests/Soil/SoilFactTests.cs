using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

/// <summary>Practice: what no soil can be is refused where the facts enter.</summary>
public class SoilFactTests
{
    private static readonly SoilReport Report = new() { Laboratory = "Ohio" };

    private static CationCharge Meq(double value) => CationCharge.FromMilliequivalentsPer100Grams(value);

    [Theory]
    [InlineData(850), InlineData(2.66), InlineData(0), InlineData(-1)]
    public void A_soil_denser_than_stone_is_refused(double gramsPerCubicCentimeter) =>
        Assert.Throws<ArgumentOutOfRangeException>("WeightPerVolume", () => Report with { WeightPerVolume = Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimeter) });

    [Fact]
    public void A_depth_below_the_surface_only() =>
        Assert.Throws<ArgumentOutOfRangeException>("SampledDepth", () => Report with { SampledDepth = Length.FromInches(-6) });

    [Fact]
    public void More_exchange_capacity_than_humus_holds_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("PrintedExchangeCapacity", () => Report with { PrintedExchangeCapacity = Meq(400) });
        Assert.Throws<ArgumentOutOfRangeException>("ExchangeCapacity", () => PlotSoil.For(Report) with { ExchangeCapacity = Meq(400) });
        Assert.NotNull((Report with { PrintedExchangeCapacity = Meq(300) }).PrintedExchangeCapacity);
    }

    [Theory]
    [InlineData(120, null, true), InlineData(61, SoilClass.Mineral, true), InlineData(60, null, false), InlineData(120, SoilClass.Organic, false)]
    public void More_exchange_capacity_than_mineral_soil_holds_is_asked_about(double meq, SoilClass? soil, bool asked)
    {
        var report = Report with { PrintedExchangeCapacity = Meq(meq), SoilClass = soil };
        Assert.Equal(asked, report.Check(new DateOnly(2026, 11, 1)).Any(f => f.Code == "soil-capacity-unlikely"));
    }

    [Theory]
    [InlineData(SoilAnalyte.Phosphorus, SoilTestUnit.DecisiemensPerMeter), InlineData(SoilAnalyte.Phosphorus, SoilTestUnit.PercentSaturation)]
    [InlineData(SoilAnalyte.Boron, SoilTestUnit.MilliequivalentsPer100Grams), InlineData(SoilAnalyte.Calcium, SoilTestUnit.DecisiemensPerMeter)]
    public void A_unit_in_which_nobody_measures_is_refused(SoilAnalyte analyte, SoilTestUnit unit) =>
        Assert.Throws<ArgumentException>(nameof(unit), () => SoilReading.FromPrinted(analyte, 5, unit, Extractant.Mehlich3));

    [Fact]
    public void What_laboratories_print_is_taken()
    {
        Assert.Equal(1.2, SoilReading.FromPrinted(SoilAnalyte.SolubleSalts, 1.2, SoilTestUnit.DecisiemensPerMeter, Extractant.NotStated).PrintedValue);
        Assert.Equal(4, SoilReading.FromPrinted(SoilAnalyte.Potassium, 4, SoilTestUnit.PercentSaturation, Extractant.Mehlich3).PrintedValue);
    }

    /// <summary>Practice: laboratories count 390, 120 and 200 ppm to the meq, and print lb/ac as twice the ppm.</summary>
    [Fact]
    public void One_reading_has_one_charge_and_one_meaning_in_pounds()
    {
        var report = Report with
        {
            WaterPh = WaterPh.FromValue(7.0),
            SampledDepth = Length.FromInches(3),
            Readings =
            [
                SoilReading.FromPrinted(SoilAnalyte.Potassium, 75, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
                SoilReading.FromPrinted(SoilAnalyte.Magnesium, 60, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
                SoilReading.FromPrinted(SoilAnalyte.Calcium, 1471, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
            ],
        };
        var balance = CationBalance.WithoutAcidity(report);
        foreach (var reading in report.Readings)
        {
            double converted = reading.ConvertTo(SoilTestUnit.MilliequivalentsPer100Grams, SampledSoil.For(report)).Converted.PrintedValue;
            Assert.Equal(balance!.Find(reading.Analyte)!.Charge.Milliequivalents, converted, 1e-9);
        }

        var bray = SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 20, SoilTestUnit.PoundsPerAcre, Extractant.BrayP1);
        Assert.Equal(10, bray.ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.For(report)).Converted.PrintedValue, 1e-9);
    }
}
