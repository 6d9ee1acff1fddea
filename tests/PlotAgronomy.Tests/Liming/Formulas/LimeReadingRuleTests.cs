using PlotAgronomy.Liming;
using PlotAgronomy.Soil;
using static PlotAgronomy.Tests.Liming.LimeSamples;

namespace PlotAgronomy.Tests.Liming;

/// <summary>Which facts a method takes, which it cannot do without, and what it says then.</summary>
public class LimeReadingRuleTests
{
    private static LimeNeed Need(string method, SoilReport report, double target) =>
        LimeMethod.Find(method).NeedFor(report, target);

    [Theory]
    [InlineData("adams-evans", SoilBuffer.AdamsEvans, 7.5)]
    [InlineData("north-carolina-mehlich", SoilBuffer.Mehlich, 6.2)]
    [InlineData("wisconsin-a2809", SoilBuffer.Smp, 6.2)]
    public void A_sum_that_has_the_water_pH_asks_for_it_and_says_nothing_else(string method, SoilBuffer buffer, double reading)
    {
        var need = Need(method, Report(null, buffer, reading), 6.0);
        Assert.Null(need.Rate);
        Assert.True(need.Has("lime-ph-missing-required"));
        Assert.False(need.Has("lime-cell-blank"));
    }

    [Fact]
    public void An_equation_of_the_buffer_alone_answers_without_the_water_pH()
    {
        // Iowa PM 1688 to 6.5: 49886 - 7245 x 6.4 = 3518 lb.
        var need = Need("iowa-pm1688-equation", Report(null, SoilBuffer.Smp, 6.4), 6.5);
        Assert.Equal(3518, need.Rate!.OfBasis.PoundsPerAcre, 1e-6);
        Assert.True(need.Has("lime-ph-missing"));
    }

    [Fact]
    public void Pennsylvania_answers_to_its_high_target_without_the_water_pH()
    {
        // LIME-S8: 1000 lb a meq to 7.0, and no least rate there.
        var report = Report(null) with { ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(3) };
        Assert.Equal(3000, Need("pennsylvania-field", report, 7.0).Rate!.OfBasis.PoundsPerAcre, 1e-9);
    }

    [Fact]
    public void A_buffer_that_was_read_twice_is_not_replaced_by_the_next()
    {
        BufferPh Read(double value, SoilBuffer buffer) => BufferPh.FromValue(value, buffer);
        var twice = Report(5.2) with
        {
            BufferPhs = [Read(6.2, SoilBuffer.Smp), Read(6.5, SoilBuffer.Smp), Read(6.4, SoilBuffer.Sikora)],
        };
        Assert.Null(Need("iowa-pm1688-table", twice, 6.5).Rate);
        var other = Report(5.2) with
        {
            BufferPhs = [Read(6.2, SoilBuffer.Mehlich), Read(6.5, SoilBuffer.Mehlich), Read(6.4, SoilBuffer.Sikora)],
        };
        Assert.NotNull(Need("iowa-pm1688-table", other, 6.5).Rate);
    }

    [Fact]
    public void Adams_evans_answers_with_the_range_of_its_reading()
    {
        // H = 8 x (8 - buffer pH): a reading of 7.5 off by 0.1 moves 4 meq by 0.8, a fifth, and the rate with it.
        var need = Need("adams-evans", Report(5.58, SoilBuffer.AdamsEvans, 7.5), 6.5);
        double rate = need.Rate!.OfBasis.PoundsPerAcre;
        Assert.Equal(0.8 * rate, need.Lowest!.OfBasis.PoundsPerAcre, 1e-6);
        Assert.Equal(1.2 * rate, need.Highest!.OfBasis.PoundsPerAcre, 1e-6);
    }

    [Fact]
    public void Where_adams_evans_stops_its_own_reason_is_given_alone()
    {
        var need = Need("adams-evans", Report(5.6, SoilBuffer.AdamsEvans, 6.5), 6.5);
        Assert.True(need.Has("lime-cec-outside"));
        Assert.False(need.Has("lime-need-above-domain"));
        Assert.False(need.Has("lime-cell-blank"));
    }

    [Theory]
    [InlineData(6.5, "lime-ph-below-domain")]
    [InlineData(6.51, "lime-target-too-high")]
    public void Adams_evans_refuses_a_soil_too_sour_for_its_curve_or_a_target_above_it(double target, string code) =>
        // LIME-AE1: targets up to 6.5; the curve begins at pH 4.51.
        Assert.True(Need("adams-evans", Report(4.4, SoilBuffer.AdamsEvans, 7.5), target).Has(code));

    [Fact]
    public void The_wholly_acid_soil_itself_still_lies_on_the_curve()
    {
        Assert.True(AdamsEvans.Holds(AdamsEvans.LowestPh, 6.5));
        Assert.False(AdamsEvans.Holds(Math.BitDecrement(AdamsEvans.LowestPh), 6.5));
        Assert.False(AdamsEvans.Holds(AdamsEvans.LowestPh, 6.51));
    }

    [Fact]
    public void Turf_to_pH_six_goes_by_its_rule_between_the_printed_rows_too()
    {
        // Rebuilt from LIME-S12: 790 x 6.15 - 2100 = 2758.5, to whole thousands 3000 lb/ac, printed as 70 lb/1000 ft2. A line
        // between
        // the rows 5.8 (50) and 6.5 (70) would give 60.
        var need = Need(
            "pennsylvania-turf",
            Report(5.4) with { ExchangeableAcidity = CationCharge.FromMilliequivalentsPer100Grams(6.15) },
            6.0
        );
        Assert.Equal(70, need.Rate!.OfBasis.PoundsPerThousandSquareFeet, 1e-9);
        Assert.False(need.Has("lime-interpolated"));
    }

    [Theory]
    [InlineData(SoilTexture.Silt, true)]
    [InlineData(SoilTexture.Clay, true)]
    [InlineData(SoilTexture.Loam, false)]
    [InlineData(SoilTexture.ClayLoam, false)]
    public void A_texture_that_is_read_in_another_s_column_is_named(SoilTexture texture, bool isNamed) =>
        Assert.Equal(isNamed, Need("texture-fallback", Report(5.0) with { Texture = texture }, 6.5).Has("lime-texture-taken-as"));

    [Theory]
    [InlineData(3.9)]
    [InlineData(6.1)]
    public void Beyond_the_garden_table_nothing_is_laid_out(double ph)
    {
        var formula = LimeMethod.Find("texture-fallback").Formula;
        var soil = PlotSoil.For(Report(ph) with { Texture = SoilTexture.Loam });
        Assert.Null(formula.PoundsPerAcre(ph, soil, 6.5));
        Assert.Empty(formula.Work(ph, soil, 6.5));
        Assert.Empty(formula.Findings(ph, soil, 6.5));
    }
}
