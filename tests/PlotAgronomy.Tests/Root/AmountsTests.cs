using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Root;

[Properties(Arbitrary = [typeof(PlotArbitraries)])]
public class AmountsTests
{
    // Exact definitions of the units (NIST Handbook 44, Appendix C).
    [Theory]
    [InlineData("0.62 ac", 0.62)]
    [InlineData("26,000 ft2", 26_000 / 43_560.0)]
    [InlineData("4840 yd2", 1.0)]
    [InlineData("1 ha", 2.4710538146716534)]
    [InlineData("10000 sq m", 2.4710538146716534)]
    public void Reads_areas(string text, double acres)
    {
        Assert.True(Amounts.TryReadArea(text, out var area, out string problem), problem);
        Near.Assert(acres, area.Acres);
    }

    [Theory]
    [InlineData("50 lb", 50)]
    [InlineData("50lb", 50)]
    [InlineData("8 oz", 0.5)]
    [InlineData("1.5 ton", 3000)]
    [InlineData("1 t", 2204.6226218487757)]
    [InlineData("1 tonne", 2204.6226218487757)]
    [InlineData("453.59237 g", 1)]
    public void Reads_weights_and_a_ton_is_short_unless_metric_is_written(string text, double pounds)
    {
        Assert.True(Amounts.TryReadMass(text, out var mass, out string problem), problem);
        Near.Assert(pounds, mass.Pounds);
    }

    [Theory]
    [InlineData("1.5 oz/1000 ft2", 4.08375)]
    [InlineData("2.25 ton/ac", 4500)]
    [InlineData("2.25 tons/acre", 4500)]
    [InlineData("90 lb/1000 ft2", 3920.4)]
    [InlineData("1 lb/100 ft2", 435.6)]
    [InlineData("1 kg/ha", 0.8921791216197044)]
    [InlineData("1 t/ha", 892.1791216197044)]
    [InlineData("1 g/m2", 8.921791216197044)]
    public void Reads_rates(string text, double poundsPerAcre)
    {
        Assert.True(Amounts.TryReadRate(text, out var rate, out string problem), problem);
        Near.Assert(poundsPerAcre, rate.PoundsPerAcre);
    }

    /// <summary>A small number below zero is no minus nothing when it is rounded away.</summary>
    [Theory]
    [InlineData(-0.03, 1, "0"), InlineData(-0.05, 1, "-0.1"), InlineData(-0.4, 0, "0"), InlineData(-0.6, 0, "-1"), InlineData(0.0, 2, "0")]
    public void A_number_rounded_to_nothing_has_no_sign(double number, int decimals, string printed)
    {
        Assert.Equal(printed, Amounts.Print(number, decimals));
        Assert.Equal($"{printed} ft", Amounts.Print(Length.FromFeet(number), "ft", decimals));
    }

    [Fact]
    public void Reads_the_other_kinds_of_amount()
    {
        Assert.True(Amounts.TryReadLength("14 ft", out var length, out _));
        Near.Assert(14, length.Feet);
        Assert.True(Amounts.TryReadSpeed("3 mph", out var speed, out _));
        Near.Assert(264, speed.FeetPerMinute);
        Assert.True(Amounts.TryReadFlow("2.1 lb/min", out var flow, out _));
        Near.Assert(2.1, flow.PoundsPerMinute);
        Assert.True(Amounts.TryReadVolume("1 bu", out var volume, out _));
        Near.Assert(2150.42, volume.CubicInches, 1e-9);
        Assert.True(Amounts.TryReadDensity("60 lb/bu", out var density, out _));
        Near.Assert(772.3, density.KilogramsPerCubicMeter, 1e-4);
        Assert.True(Amounts.TryReadTemperature("-2 C", out var cold, out _));
        Near.Assert(28.4, cold.DegreesFahrenheit, 1e-9);
        Assert.True(Amounts.TryReadDuration("2.5 min", out var time, out _));
        Assert.Equal(150, time.TotalSeconds);
        Assert.True(Amounts.TryReadPercent("85 %", out var fraction, out _));
        Assert.Equal(0.85, fraction.Value);
    }

    [Theory]
    [InlineData("0.62")]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("ac")]
    [InlineData("0.62 furlong")]
    [InlineData("-1 ac")]
    [InlineData("1,5 ac")]
    [InlineData("1,00,000 ft2")]
    [InlineData("1.2.3 ac")]
    [InlineData("1.5,000 ft2")]
    [InlineData("1e3 ac")]
    [InlineData("NaN ac")]
    public void What_cannot_be_read_says_what_was_expected(string? text)
    {
        Assert.False(Amounts.TryReadArea(text, out _, out string problem));
        Assert.Contains("'0.62 ac'", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.85")]
    [InlineData("101 %")]
    public void A_percentage_needs_its_sign_and_stays_within_the_whole(string text) => Assert.False(Amounts.TryReadPercent(text, out _, out _));

    [Theory]
    [MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void Reading_and_printing_do_not_follow_the_culture(string culture)
    {
        using var scope = new CultureScope(culture);
        Assert.True(Amounts.TryReadMass("1.5 lb", out var mass, out _));
        Near.Assert(1.5, mass.Pounds);
        Assert.Equal("1,234.5 lb", Amounts.Print(Mass.FromPounds(1234.5), decimals: 1));
        Assert.Equal("12.50 USD", Currency.FromCode("USD").Print(12.5m));
        Assert.Equal("7.5 %", Fraction.FromPercent(7.5).ToString());
    }

    [Property]
    public bool What_is_printed_reads_back(Mass mass, Area area, ApplicationRate rate, Fraction fraction) =>
        new[] { "lb", "oz", "g", "kg", "ton", "t" }.All(u => Amounts.TryReadMass(Amounts.Print(mass, u), out var m, out _) && Near.Equal(mass.Pounds, m.Pounds))
        && new[] { "ac", "ft2", "m2", "ha" }.All(u => Amounts.TryReadArea(Amounts.Print(area, u), out var a, out _) && Near.Equal(area.Acres, a.Acres))
        && new[] { "lb/ac", "oz/1000 ft2", "ton/ac", "kg/ha" }.All(u => Amounts.TryReadRate(Amounts.Print(rate, u), out var r, out _) && Near.Equal(rate.PoundsPerAcre, r.PoundsPerAcre))
        && Amounts.TryReadPercent(Amounts.Print(fraction), out var f, out _) && Near.Equal(fraction.Value, f.Value);

    [Property]
    public bool A_rate_in_any_unit_is_the_same_rate(ApplicationRate rate) =>
        Near.Equal(rate.PoundsPerAcre, ApplicationRate.FromKilogramsPerHectare(rate.KilogramsPerHectare).PoundsPerAcre)
        && Near.Equal(rate.PoundsPerAcre, ApplicationRate.FromOuncesPerThousandSquareFeet(rate.OuncesPerThousandSquareFeet).PoundsPerAcre)
        && Near.Equal(rate.PoundsPerAcre, ApplicationRate.FromShortTonsPerAcre(rate.ShortTonsPerAcre).PoundsPerAcre);

    [Property]
    public bool Twice_the_area_needs_twice_the_mass(ApplicationRate rate, Area area) =>
        Near.Equal(2 * rate.Over(area).Pounds, rate.Over(area * 2).Pounds);

    [Property]
    public bool Whole_packages_hold_what_is_needed_and_one_fewer_does_not(Mass needed, Mass package)
    {
        int packages = Package.RoundUp(needed, package);
        return packages * package.Pounds >= needed.Pounds * (1 - 1e-9) && (packages - 1) * package.Pounds < needed.Pounds;
    }

    [Fact]
    public void Thirteen_bags_that_hold_exactly_the_need_are_thirteen() =>
        Assert.Equal(13, Package.RoundUp(Mass.FromPounds(13 * 0.1 * 3), Mass.FromPounds(0.3)));

    [Theory]
    [InlineData("usd")]
    [InlineData("US")]
    [InlineData("")]
    public void A_currency_is_three_capital_letters(string code) => Assert.Throws<ArgumentException>(() => Currency.FromCode(code));
}
