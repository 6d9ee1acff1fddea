using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

public class SoilReadingTests
{
    private static SampledSoil Scooped(double gramsPerCubicCentimeter) => new()
    {
        Layer = SampledLayer.FurrowSlice,
        WeightPerVolume = Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimeter),
    };

    [Theory]
    [InlineData(-1e-9), InlineData(double.NaN), InlineData(double.PositiveInfinity), InlineData(double.NegativeInfinity)]
    public void A_reading_below_zero_or_not_a_number_is_refused(double value)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => SoilSamples.Phosphorus(value));
        Assert.Equal("printedValue", error.ParamName);
        Assert.Contains("(ppm)", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_of_zero_is_a_reading() => Assert.Equal(0, SoilSamples.Phosphorus(0).PrintedValue);

    [Fact]
    public void Zinc_has_no_oxide_on_a_report() =>
        Assert.Throws<ArgumentException>(() => SoilReading.FromPrinted(SoilAnalyte.Zinc, 1, SoilTestUnit.PartsPerMillion, Extractant.Dtpa, PrintedForm.Oxide));

    [Fact]
    public void Undefined_choices_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SoilReading.FromPrinted((SoilAnalyte)99, 1, SoilTestUnit.PartsPerMillion, Extractant.Dtpa));
        Assert.Throws<ArgumentOutOfRangeException>(() => SoilReading.FromPrinted(SoilAnalyte.Zinc, 1, (SoilTestUnit)99, Extractant.Dtpa));
        Assert.Throws<ArgumentOutOfRangeException>(() => SoilReading.FromPrinted(SoilAnalyte.Zinc, 1, SoilTestUnit.PartsPerMillion, (Extractant)99));
        Assert.Throws<ArgumentOutOfRangeException>(() => SoilReading.FromPrinted(SoilAnalyte.Calcium, 1, SoilTestUnit.PartsPerMillion, Extractant.Dtpa, (PrintedForm)9));
    }

    [Fact]
    public void A_conversion_keeps_the_reading_as_printed_and_its_extractant()
    {
        var conversion = SoilSamples.Phosphorus(30).ConvertTo(SoilTestUnit.PoundsPerAcre, SampledSoil.Conventional);
        Assert.Equal(30, conversion.Original.PrintedValue);
        Assert.Equal(Extractant.Mehlich3, conversion.Converted.Extractant);
        Assert.Empty(conversion.Findings);
        Assert.Equal(["SOIL-PA5"], conversion.Sources.Select(s => s.Id));
        Assert.Equal("lb/ac = ppm x million lb of soil = 30 x 2 = 60 [SOIL-PA5]", Assert.Single(conversion.ShowWork()).ToString());
    }

    [Fact]
    public void A_conversion_to_the_same_unit_is_the_reading_itself()
    {
        var reading = SoilSamples.Phosphorus(30);
        var conversion = reading.ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.Conventional);
        Assert.Equal(reading, conversion.Converted);
        Assert.Empty(conversion.ShowWork());
    }

    [Fact]
    public void An_unknown_depth_is_assumed_with_a_finding_never_in_silence()
    {
        var conversion = SoilSamples.Phosphorus(30).ConvertTo(SoilTestUnit.PoundsPerAcre, new SampledSoil());
        Assert.Equal(60, conversion.Converted.PrintedValue, 1e-9);
        Assert.Equal("soil-depth-assumed", Assert.Single(conversion.Findings).Code);
    }

    [Fact]
    public void Volume_to_weight_asks_for_the_weight_per_volume()
    {
        var error = Assert.Throws<ArgumentException>(() =>
            SoilSamples.Phosphorus(60, SoilTestUnit.MilligramsPerCubicDecimeter).ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.Conventional));
        Assert.Contains("W/V", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Percent_saturation_asks_for_the_exchange_capacity() =>
        Assert.Throws<ArgumentException>(() => SoilReading.FromPrinted(SoilAnalyte.Calcium, 60, SoilTestUnit.PercentSaturation, Extractant.NotStated)
            .ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.Conventional));

    /// <summary>Hand algebra: 60 % of 10 meq is 6 meq of calcium, 6 x 20.039 x 10 ppm.</summary>
    [Fact]
    public void Percent_saturation_is_a_share_of_the_capacity()
    {
        var soil = new SampledSoil { ExchangeCapacity = CationCharge.FromMilliequivalentsPer100Grams(10) };
        var reading = SoilReading.FromPrinted(SoilAnalyte.Calcium, 60, SoilTestUnit.PercentSaturation, Extractant.NotStated);
        Assert.Equal(1200, reading.ConvertTo(SoilTestUnit.PartsPerMillion, soil).Converted.PrintedValue, 1e-9);
    }

    [Fact]
    public void A_charge_is_asked_of_bases_only() =>
        Assert.Throws<ArgumentException>(() => SoilSamples.Phosphorus(30).ConvertTo(SoilTestUnit.MilliequivalentsPer100Grams, SampledSoil.Conventional));

    [Fact]
    public void Soluble_salts_have_no_other_unit() =>
        Assert.Throws<ArgumentException>(() => SoilReading.FromPrinted(SoilAnalyte.SolubleSalts, 1, SoilTestUnit.DecisiemensPerMeter, Extractant.SaturatedPaste)
            .ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.Conventional));

    [Fact]
    public void An_index_is_defined_for_its_own_extractant_and_analytes_only()
    {
        Assert.Throws<ArgumentException>(() => SoilSamples.Phosphorus(30, extractant: Extractant.BrayP1).ConvertTo(SoilTestUnit.DelawareIndex, SampledSoil.Conventional));
        Assert.Throws<ArgumentException>(() => SoilReading.FromPrinted(SoilAnalyte.Boron, 1, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3).ConvertTo(SoilTestUnit.DelawareIndex, SampledSoil.Conventional));
    }

    [Fact]
    public void A_factor_from_memory_leaves_its_finding()
    {
        var conversion = SoilSamples.Phosphorus(45, SoilTestUnit.NorthCarolinaIndex).ConvertTo(SoilTestUnit.MilligramsPerCubicDecimeter, Scooped(1.1));
        Assert.Equal("data-from-memory", Assert.Single(conversion.Findings).Code);
    }

    /// <summary>Common practice: an index of 45 is not 45 lb/ac.</summary>
    [Fact]
    public void C19_an_index_is_not_pounds_per_acre()
    {
        var soil = new SampledSoil { Layer = SampledLayer.FromDepth(Length.FromCentimeters(20)) };
        var reading = SoilSamples.Phosphorus(45, SoilTestUnit.NorthCarolinaIndex).ConvertTo(SoilTestUnit.PoundsPerAcre, soil).Converted;
        PracticeCase.AssertMatches("C19", "Mehlich-3 P", reading.PrintedValue);
    }

    [Fact]
    public void C17_pounds_per_acre_are_halved_once()
    {
        PracticeCase.AssertMatches("C17", "P", Ppm(SoilSamples.Phosphorus(60, SoilTestUnit.PoundsPerAcre)));
        PracticeCase.AssertMatches("C17", "K", Ppm(SoilReading.FromPrinted(SoilAnalyte.Potassium, 120, SoilTestUnit.PoundsPerAcre, Extractant.Mehlich3)));
        PracticeCase.AssertMatches("C17", "P if 30 ppm is read as lb/acre", Ppm(SoilSamples.Phosphorus(30, SoilTestUnit.PoundsPerAcre)));
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Text_and_numbers_do_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        Assert.Equal("phosphorus 30.5 ppm (Mehlich-3)", SoilSamples.Phosphorus(30.5).ToString());
        Assert.Equal("buffer pH 6.55 (SMP)", BufferPh.FromValue(6.55, SoilBuffer.Smp).ToString());
        Assert.Equal("1.5 meq/100 g", CationCharge.FromMilliequivalentsPer100Grams(1.5).ToString());
        var report = SoilSamples.Named("C18");
        Assert.Equal(11.53, CationBalance.For(report, AcidityTerm.SmpWithSodium).Capacity!.Value.Milliequivalents, 0.005);
        Assert.Contains(SoilReport.CheckTypedPh(65), f => f.Text.Contains("6.5", StringComparison.Ordinal));
    }

    private static double Ppm(SoilReading reading) => reading.ConvertTo(SoilTestUnit.PartsPerMillion, SampledSoil.Conventional).Converted.PrintedValue;
}
