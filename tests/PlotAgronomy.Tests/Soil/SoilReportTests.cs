using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

public class SoilReportTests
{
    private static readonly SoilReport Report = new()
    {
        Laboratory = "North Carolina",
        WaterPh = WaterPh.FromValue(5.4),
        SampledOn = new DateOnly(2026, 3, 14),
    };

    [Fact]
    public void A_report_can_be_varied_and_is_only_equal_to_itself()
    {
        var sweeter = Report with { WaterPh = WaterPh.FromValue(6.4) };
        Assert.Equal(6.4, sweeter.WaterPh!.Value);
        Assert.Equal(5.4, Report.WaterPh!.Value);
        Assert.Equal(Report.SampledOn, sweeter.SampledOn);
        Assert.NotEqual(Report, Report with { });
        Assert.Equal(Report, Report);
    }

    [Fact]
    public void It_refuses_what_cannot_be()
    {
        Assert.Throws<ArgumentException>(() => Report with { Laboratory = " " });
        Assert.Throws<ArgumentException>(() => Report with { Readings = default });
        Assert.Throws<ArgumentException>(() => Report with { BufferPhs = [null!] });
        Assert.Throws<ArgumentOutOfRangeException>(() => Report with { SampledDepth = Length.Zero });
        Assert.Throws<ArgumentOutOfRangeException>(() => Report with { WeightPerVolume = Density.Zero });
        Assert.Throws<ArgumentOutOfRangeException>(() => Report with { SoilClass = (SoilClass)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Report with { Texture = (SoilTexture)99 });
        Assert.Throws<ArgumentOutOfRangeException>(() => Report with { SampleMoisture = (SampleMoisture)99 });
    }

    [Theory, MemberData(nameof(CultureScope.Treacherous), MemberType = typeof(CultureScope))]
    public void It_reads_alike_everywhere(string culture)
    {
        using (new CultureScope(culture))
        {
            Assert.Equal("report of North Carolina, sampled 2026-03-14", Report.ToString());
            Assert.Equal("report of North Carolina", (Report with { SampledOn = null }).ToString());
        }
    }
}
