using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Root;

public class ApplicationRateTests
{
    [Theory]
    [InlineData(-1.0)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Impossible_rates_throw_and_name_the_argument(double value)
    {
        var factories = new Func<double, ApplicationRate>[]
        {
            ApplicationRate.FromPoundsPerAcre, ApplicationRate.FromPoundsPerThousandSquareFeet, ApplicationRate.FromOuncesPerThousandSquareFeet,
            ApplicationRate.FromShortTonsPerAcre, ApplicationRate.FromKilogramsPerHectare, ApplicationRate.FromTonnesPerHectare,
        };
        foreach (var create in factories)
        {
            var error = Assert.Throws<ArgumentOutOfRangeException>(() => create(value));
            Assert.False(string.IsNullOrEmpty(error.ParamName));
        }
    }

    [Fact]
    public void A_ton_per_acre_is_45_9_lb_per_1000_ft2_and_2_24_t_per_ha()
    {
        // Exact definitions; lime handbook, section 1.
        var rate = ApplicationRate.FromShortTonsPerAcre(1);
        Assert.Equal(45.9, rate.PoundsPerThousandSquareFeet, 0.05);
        Assert.Equal(2.24, rate.TonnesPerHectare, 0.005);
    }

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Text_does_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        Assert.Equal("12.5 lb/ac", ApplicationRate.FromPoundsPerAcre(12.5).ToString());
    }

    [Fact]
    public void The_default_is_zero() => Assert.Equal(ApplicationRate.Zero, default);

    [Fact]
    public void A_class_limit_in_pounds_per_acre_compares_exactly() =>
        Assert.True(ApplicationRate.FromPoundsPerAcre(25.1) >= ApplicationRate.FromPoundsPerAcre(25.1));

    [Fact]
    public void Mass_over_area_and_back() =>
        Near.Assert(40, ApplicationRate.FromMassAndArea(ApplicationRate.FromPoundsPerAcre(40).Over(Area.FromSquareFeet(26_000)), Area.FromSquareFeet(26_000)).PoundsPerAcre);
}
