using PlotAgronomy.Liming;
using PlotAgronomy.Records;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

public class ReadingTrendTests
{
    private static SoilReportEntry Sampled(int year, double ph, double phosphorus, string laboratory = "county laboratory", Extractant extractant = Extractant.Mehlich3) =>
        new() { On = Books.Day(year, 3, 1), Plot = Books.North, Report = Books.Report(ph, phosphorus, laboratory, extractant) };

    private static PlotBook Rising => PlotBook.Empty.With("a", [.. new[] { (2016, 14), (2018, 18), (2019, 17), (2021, 23), (2023, 26), (2024, 31) }.Select(r => Sampled(r.Item1, 6, r.Item2))]);

    /// <summary>Score 13, exact two-sided chance 2 x 0.00833, 2.0 ppm a year (second implementation; leap days move it a
    /// little).</summary>
    [Fact]
    public void Phosphorus_rises_by_its_real_dates()
    {
        var trend = Assert.Single(ReadingTrend.All(Rising, Books.North), t => t.What == "phosphorus");
        Assert.Equal(13, trend.Score);
        Assert.Equal(0.01667, trend.ChanceWithoutTrend, 5e-5);
        Assert.Equal(2.0, trend.ChangePerYear!.Value, 0.002);
        Assert.True(trend is { IsExact: true, IsTrend: true, IsRealChange: true });
        Assert.Equal(0.2772 * 14, trend.LeastRealChange!.Value, 1e-3);
        Assert.Empty(trend.Findings);
    }

    [Fact]
    public void What_does_not_change_is_no_trend_and_its_change_is_noise()
    {
        var trend = Assert.Single(ReadingTrend.All(Rising, Books.North), t => t.What == "water pH");
        Assert.Equal((0, 1.0), (trend.Score, trend.ChanceWithoutTrend));
        Assert.False(trend.IsTrend);
        Assert.Equal("record-change-is-noise", Assert.Single(trend.Findings).Code);
    }

    [Theory]
    [InlineData("state laboratory", Extractant.Mehlich3)]
    [InlineData("county laboratory", Extractant.BrayP1)]
    public void Another_laboratory_or_extractant_is_kept_apart_and_said(string laboratory, Extractant extractant)
    {
        var book = Rising.With("a", Sampled(2025, 6, 60, laboratory, extractant));
        var trends = ReadingTrend.All(book, Books.North).Where(t => t.What == "phosphorus").ToList();
        Assert.Equal([1, 6], trends.Select(t => t.Points.Length).Order());
        Assert.All(trends, t => Assert.Contains(t.Findings, f => f.Code == "record-series-apart"));
        Assert.Equal(2.0, trends.Single(t => t.Points.Length == 6).ChangePerYear!.Value, 0.002);
    }

    [Theory]
    [InlineData(4, true)]
    [InlineData(5, false)]
    public void Four_tests_cannot_show_a_trend_and_five_can(int tests, bool isTooShort)
    {
        var book = PlotBook.Empty.With("a", [.. Enumerable.Range(0, tests).Select(i => Sampled(2018 + i, 6, 10 + (10 * i)))]);
        var trend = Assert.Single(ReadingTrend.All(book, Books.North), t => t.What == "phosphorus");
        Assert.Equal(isTooShort, trend.Findings.Any(f => f.Code == "record-trend-short"));
        Assert.Equal(!isTooShort, trend.IsTrend);
        Assert.Equal(trend.LeastChance, trend.ChanceWithoutTrend, 1e-12);
    }

    [Fact]
    public void Readings_below_a_limit_are_left_out_by_name_and_two_of_a_day_give_their_median()
    {
        var below = Sampled(2020, 6, 5) with { Report = Books.Report(6, 5) with { Readings = [SoilReading.FromPrinted(SoilAnalyte.Phosphorus, 5, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3) with { IsUpperLimit = true }] } };
        var trend = Assert.Single(ReadingTrend.All(Rising.With("a", below, Sampled(2024, 6, 41)), Books.North), t => t.What == "phosphorus");
        Assert.Equal(36, trend.Points[^1].Value);
        Assert.Equal(["record-less-than-left-out", "record-median-of-day"], trend.Findings.Select(f => f.Code));
    }

    [Fact]
    public void More_than_ten_readings_take_the_normal_curve()
    {
        var book = PlotBook.Empty.With("a", [.. Enumerable.Range(0, 11).Select(i => Sampled(2010 + i, 6, 10 + i))]);
        var trend = Assert.Single(ReadingTrend.All(book, Books.North), t => t.What == "phosphorus");
        Assert.False(trend.IsExact);
        Assert.Equal(2 * RankCorrelation.UpperTail(54 / Math.Sqrt(165)), trend.ChanceWithoutTrend, 1e-12);
        Assert.Contains(trend.ShowWork(), l => l.Label == "Variance of the score");
    }

    private static PlotBook Limed(double before, double after, double tons, string laboratoryAfter = "county laboratory") =>
        PlotBook.Empty.With(
            "a",
            Sampled(2023, before, 20),
            new NeedEntry { On = Books.Day(2023, 3, 10), Plot = Books.North, Lime = LimeRate.FromBasis(ApplicationRate.FromShortTonsPerAcre(2), 6.5, Length.FromInches(6), LimeBasis.GroundLimestone, Institution.NorthCarolina) },
            new LimeEntry { On = Books.Day(2023, 4, 1), Plot = Books.North, Material = LimingMaterial.FromBasis(LimeBasis.GroundLimestone), Loads = [SpreadLoad.FromWeight(Mass.FromPounds(tons * 2000))] },
            Sampled(2025, after, 20, laboratoryAfter));

    /// <summary>On one acre the whole rate has its two years: from 5.5 the most promised is 6.5, and 0.277 for the readings.</summary>
    [Theory]
    [InlineData(2, 6.4, null)]
    [InlineData(2, 6.9, "record-ph-above-promise")]
    [InlineData(2, 5.2, "record-ph-below-promise")]
    [InlineData(1, 6.4, "record-ph-above-promise")]
    public void The_pH_is_held_against_what_the_lime_promised(double tons, double after, string? code)
    {
        var response = PhResponse.Of(Limed(5.5, after, tons), Books.North, Area.FromAcres(1), Books.Day(2025, 6, 1)).Value;
        Assert.Equal(code, response.Findings.SingleOrDefault()?.Code);
        Assert.Equal(5.5 + (tons / 2) + 0.2772, response.PromisedHigh, 1e-3);
        Assert.Equal(code is null, response.IsAsPromised);
        Assert.Equal(2, response.ShowWork().Length);
    }

    [Fact]
    public void Without_a_pH_before_the_lime_its_answer_is_open()
    {
        var limed = Limed(5.5, 6.4, 2);
        var book = PlotBook.Empty.With("a", [.. limed.Current.Where(e => e is not SoilReportEntry).Select(e => e with { Id = null }), Sampled(2025, 6.4, 20)]);
        Assert.Equal("record-ask-ph-before", Assert.Single(PhResponse.Of(book, Books.North, Area.FromAcres(1), Books.Day(2025, 6, 1)).Questions).Code);
        Assert.Equal("record-ask-lime-need", Assert.Single(PhResponse.Of(PlotBook.Empty, Books.North, Area.FromAcres(1), Books.Day(2025, 6, 1)).Questions).Code);
    }

    [Fact]
    public void Another_laboratory_does_not_tell_what_the_lime_did()
    {
        var answer = PhResponse.Of(Limed(5.5, 6.4, 2, "state laboratory"), Books.North, Area.FromAcres(1), Books.Day(2025, 6, 1));
        Assert.Equal("record-ask-ph-after", Assert.Single(answer.Questions).Code);
        Assert.Equal(AnswerState.NoneNeeded, PhResponse.Of(Limed(5.5, 6.4, 2), Books.North, Area.FromAcres(1), Books.Day(2023, 3, 20)).State);
    }
}
