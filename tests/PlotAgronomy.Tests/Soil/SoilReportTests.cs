using PlotAgronomy.Soil;
using PlotAgronomy.Tests.Support;
using UnitsNet;

namespace PlotAgronomy.Tests.Soil;

public class SoilReportTests
{
    [Fact]
    public void A_report_finds_readings_by_analyte_and_extractant()
    {
        var bray = SoilSamples.Phosphorus(18, extractant: Extractant.BrayP1);
        var mehlich = SoilSamples.Phosphorus(24);
        var report = new SoilReport { Laboratory = "Ohio", Readings = [bray, mehlich] };
        Assert.Equal(bray, report.Find(SoilAnalyte.Phosphorus));
        Assert.Equal(mehlich, report.Find(SoilAnalyte.Phosphorus, Extractant.Mehlich3));
        Assert.Equal([bray, mehlich], report.FindAll(SoilAnalyte.Phosphorus));
        Assert.Null(report.Find(SoilAnalyte.Potassium));
        Assert.Null(report.Find(SoilAnalyte.Phosphorus, Extractant.Olsen));
    }

    [Fact]
    public void What_is_not_printed_is_null_never_zero()
    {
        var report = new SoilReport { Laboratory = "Ohio" };
        Assert.Null(report.WaterPh);
        Assert.Null(report.FindBuffer(SoilBuffer.Smp));
        Assert.Null(report.ExchangeableAcidity);
        Assert.Null(report.PrintedExchangeCapacity);
    }

    [Theory]
    [InlineData("North Carolina", "North Carolina"), InlineData("Clemson, South Carolina", "South Carolina"), InlineData("the oklahoma state lab", "Oklahoma")]
    [InlineData("Arizona private laboratory", null), InlineData("Ohioville testing", null), InlineData("West Virginia", null), InlineData("Virginia", "Virginia")]
    public void A_program_is_found_by_the_laboratorys_name(string laboratory, string? program) => Assert.Equal(program, SoilProgram.FindIn(laboratory)?.Institution.Name);

    [Fact]
    public void A_named_program_goes_before_the_laboratory() =>
        Assert.Equal("Pennsylvania", SoilProgram.For(new SoilReport { Laboratory = "a laboratory in Ohio", Program = "Pennsylvania" })!.Institution.Name);

    [Fact]
    public void Extractants_convert_on_request_only_and_leave_a_finding()
    {
        var conversion = ExtractantConversion.TriStateBrayToMehlich3.Convert(SoilSamples.Phosphorus(18, extractant: Extractant.BrayP1));
        Assert.Equal(Extractant.BrayP1, conversion.Original.Extractant);
        Assert.Equal(Extractant.Mehlich3, conversion.Converted.Extractant);
        Assert.Equal("soil-extractant-converted", Assert.Single(conversion.Findings).Code);
        Assert.Throws<ArgumentException>(() => ExtractantConversion.TriStateBrayToMehlich3.Convert(SoilSamples.Phosphorus(18)));
        Assert.Throws<ArgumentException>(() => ExtractantConversion.Find("laboratory-mehlich3-to-bray").Convert(SoilSamples.Phosphorus(45, SoilTestUnit.NorthCarolinaIndex)));
        Assert.Throws<KeyNotFoundException>(() => ExtractantConversion.Find("any"));
    }

    [Fact]
    public void Two_conversions_that_disagree_stay_two()
    {
        double there = ExtractantConversion.TriStateBrayToMehlich3.Factor;
        double back = ExtractantConversion.Find("laboratory-mehlich3-to-bray").Factor;
        Assert.Equal(0.05, 1 - back * there, 0.01);
        Assert.Single(ExtractantConversion.Between(SoilAnalyte.Phosphorus, Extractant.BrayP1, Extractant.Mehlich3));
    }

    [Theory]
    [InlineData(Extractant.Mehlich1, Extractant.Mehlich3), InlineData(Extractant.Mehlich3, Extractant.Mehlich1), InlineData(Extractant.Mehlich3Icp, Extractant.Mehlich3Colorimetric), InlineData(Extractant.Olsen, Extractant.Mehlich3), InlineData(Extractant.Mehlich3, Extractant.Morgan)]
    public void Where_research_found_no_equation_the_reason_is_given(Extractant from, Extractant to)
    {
        Assert.Empty(ExtractantConversion.Between(SoilAnalyte.Phosphorus, from, to));
        Assert.Equal("soil-extractant-no-equation", ExtractantConversion.ReasonAgainst(SoilAnalyte.Phosphorus, from, to)!.Code);
    }

    [Fact]
    public void Nothing_is_known_against_a_published_conversion() =>
        Assert.Null(ExtractantConversion.ReasonAgainst(SoilAnalyte.Phosphorus, Extractant.BrayP1, Extractant.Mehlich3));

    [Fact]
    public void Sampling_advice_follows_the_careful_rule()
    {
        var last = new DateOnly(2026, 3, 1);
        var advice = SamplingAdvice.ForPlot(2, topDressedWithoutTillage: false, last);
        Assert.Equal((2, 10, 15), (advice.Composites, advice.FewestCores, advice.MostCores));
        Assert.Equal(6, advice.Depth.Inches, 1e-12);
        Assert.Equal((new DateOnly(2028, 3, 1), new DateOnly(2029, 3, 1)), (advice.NextFrom!.Value, advice.NextBy!.Value));
        Assert.Equal(3, advice.ShowWork().Length);

        var clover = SamplingAdvice.ForPlot(1, topDressedWithoutTillage: true, last, lastRatingWasExtreme: true);
        Assert.Equal(4, clover.Depth.Inches, 1e-12);
        Assert.Equal(new DateOnly(2027, 3, 1), clover.NextBy);
        Assert.Null(SamplingAdvice.ForPlot(1, false).NextBy);
        Assert.Throws<ArgumentOutOfRangeException>(() => SamplingAdvice.ForPlot(0, false));
    }

    /// <summary>Printed by the institutions: South Carolina at least 10 cores to 8 in for up to 10 acres; Mississippi 20 to 25 cores to 6 in for up to 15.</summary>
    [Theory]
    [InlineData("South Carolina", 10, 8, 10), InlineData("Mississippi forage", 20, 6, 15)]
    public void Printed_sampling_rules_can_be_read(string institution, int cores, double inches, double acres)
    {
        var rule = SamplingRule.All.Single(r => r.Title == institution);
        Assert.Equal(cores, rule.FewestCores);
        Assert.Equal(inches, rule.Depth!.Value.Inches, 1e-12);
        Assert.Equal(acres, rule.LargestArea!.Value.Acres, 1e-12);
    }
}
