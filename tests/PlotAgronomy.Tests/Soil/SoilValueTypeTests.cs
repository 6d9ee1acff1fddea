using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

public class SoilValueTypeTests
{
    public static TheoryData<double> NotPh => [0, -1e-9, 14.000001, double.NaN, double.PositiveInfinity, double.NegativeInfinity];

    [Theory, MemberData(nameof(NotPh))]
    public void A_ph_lies_above_zero_and_up_to_fourteen(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WaterPh.FromValue(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => SaltPh.FromValue(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => BufferPh.FromValue(value, SoilBuffer.Smp));
        Assert.Throws<ArgumentOutOfRangeException>(() => BufferPh.FromLimeTestIndex(value * 10, SoilBuffer.Smp));
    }

    [Fact]
    public void The_limits_of_ph_belong_to_it()
    {
        Assert.Equal(14, WaterPh.FromValue(14).Value);
        Assert.Equal(1e-9, SaltPh.FromValue(1e-9).Value);
        Assert.Equal(14, BufferPh.FromLimeTestIndex(140, SoilBuffer.Smp).Value);
    }

    [Fact]
    public void A_lime_test_index_is_ten_times_the_buffer_ph()
    {
        var reading = BufferPh.FromLimeTestIndex(67, SoilBuffer.Smp);
        Assert.Equal(6.7, reading.Value, 1e-12);
        Assert.Equal(67, reading.LimeTestIndex, 1e-12);
    }

    [Fact]
    public void A_buffer_ph_needs_a_known_buffer() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BufferPh.FromValue(6.5, (SoilBuffer)99));

    [Fact]
    public void Two_buffers_with_one_number_are_not_equal()
    {
        Assert.NotEqual(BufferPh.FromValue(6.5, SoilBuffer.Smp), BufferPh.FromValue(6.5, SoilBuffer.Mehlich));
        Assert.Equal(BufferPh.FromValue(6.5, SoilBuffer.Smp), BufferPh.FromValue(6.5, SoilBuffer.Smp));
        Assert.Equal(WaterPh.FromValue(6.5), WaterPh.FromValue(6.5));
    }

    [Theory]
    [InlineData(-1e-9), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void A_charge_is_never_negative(double milliequivalents)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CationCharge.FromMilliequivalentsPer100Grams(milliequivalents));
        Assert.Throws<ArgumentOutOfRangeException>(() => CationCharge.FromMilliequivalentsPer100CubicCentimeters(milliequivalents));
    }

    [Fact]
    public void The_default_charge_is_zero_by_weight()
    {
        Assert.Equal(CationCharge.FromMilliequivalentsPer100Grams(0), default);
        Assert.NotEqual(CationCharge.FromMilliequivalentsPer100CubicCentimeters(0), default);
    }

    /// <summary>Hand algebra: 10 meq in 100 cm3 that weigh 125 g are 8 meq in 100 g.</summary>
    [Fact]
    public void A_charge_by_volume_is_divided_by_the_weight_of_that_volume()
    {
        var density = Density.FromGramsPerCubicCentimeter(1.25);
        Assert.Equal(8, CationCharge.FromMilliequivalentsPer100CubicCentimeters(10).ByWeight(density).Milliequivalents, 1e-12);
        Assert.Equal(10, CationCharge.FromMilliequivalentsPer100Grams(10).ByWeight(density).Milliequivalents, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => CationCharge.FromMilliequivalentsPer100Grams(10).ByWeight(Density.FromGramsPerCubicCentimeter(0)));
    }

    [Theory]
    [InlineData(0), InlineData(-1), InlineData(48.0001), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void A_layer_has_a_depth_up_to_four_feet(double inches) =>
        Assert.ThrowsAny<ArgumentException>(() => SampledLayer.FromDepth(Length.FromInches(inches)));

    [Theory]
    [InlineData(0), InlineData(-1), InlineData(2.6501), InlineData(double.NaN), InlineData(double.PositiveInfinity)]
    public void A_measured_layer_is_lighter_than_rock(double gramsPerCubicCentimeter) =>
        Assert.ThrowsAny<ArgumentException>(() => SampledLayer.Measured(Length.FromInches(6), Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimeter)));

    [Theory]
    [InlineData(5.999, false), InlineData(6, true), InlineData(7, true), InlineData(7.001, false)]
    public void A_sample_of_six_to_seven_inches_is_the_furrow_slice(double inches, bool furrowSlice) =>
        Assert.Equal(furrowSlice, SampledLayer.Conventional(Length.FromInches(inches)).SoilMass.PoundsPerAcre == 2_000_000);

    [Fact]
    public void The_limits_of_a_layer_belong_to_it()
    {
        Assert.Equal(14_400_000, SampledLayer.FromDepth(Length.FromInches(48)).SoilMass.PoundsPerAcre, 1e-6);
        Assert.Equal(48, SampledLayer.Measured(Length.FromInches(48), Density.FromGramsPerCubicCentimeter(2.65)).Depth.Inches, 1e-9);
    }
}
