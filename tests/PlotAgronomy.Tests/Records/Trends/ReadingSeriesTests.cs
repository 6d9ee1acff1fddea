using PlotAgronomy.Records;
using PlotAgronomy.Soil;
using UnitsNet;

namespace PlotAgronomy.Tests.Records;

/// <summary>What is kept apart from what, and what counts as noise (REC-WUR: 0.1 of a pH, 10 % of P, K and Mg).</summary>
public class ReadingSeriesTests
{
    private static SoilReport Report => Books.Report(6, 20) with
    {
        SaltPh = SaltPh.FromValue(5.4),
        BufferPhs = [BufferPh.FromValue(6.4, SoilBuffer.Mehlich)],
        OrganicMatter = Fraction.FromPercent(2.5),
        SampledDepth = Length.FromInches(6),
        Readings =
        [
            SoilReading.FromPrinted(
                SoilAnalyte.Potassium,
                90,
                SoilTestUnit.PoundsPerAcre,
                Extractant.Mehlich1,
                PrintedForm.Oxide
            ),
            SoilReading.FromPrinted(SoilAnalyte.Magnesium, 60, SoilTestUnit.PartsPerMillion, Extractant.Mehlich3),
            SoilReading.FromPrinted(SoilAnalyte.Boron, 0.5, SoilTestUnit.PartsPerMillion, Extractant.HotWater),
            SoilReading.FromPrinted(SoilAnalyte.Zinc, 0.5, SoilTestUnit.PartsPerMillion, Extractant.Dtpa) with
            {
                IsUpperLimit = true,
            },
        ],
    };

    [Fact]
    public void Each_reading_of_a_report_is_a_series_of_its_own_but_one_known_only_to_be_less()
    {
        var series = ReadingSeries.Of(Report).ToList();
        Assert.Equal(
            ["water pH", "salt pH", "buffer pH", "organic matter", "potassium", "magnesium", "boron"],
            series.Select(s => s.Series.What)
        );
        Assert.Equal([6, 5.4, 6.4, 2.5, 90, 60, 0.5], series.Select(s => s.Value));
        Assert.All(series, s => Assert.EndsWith(", 6 in", s.Series.InWords, StringComparison.Ordinal));
        Assert.Contains(" as oxide", series[4].Series.InWords, StringComparison.Ordinal);
        Assert.DoesNotContain(" as oxide", series[5].Series.InWords, StringComparison.Ordinal);
        Assert.Equal("water pH, county laboratory", ReadingSeries.Of(Books.Report(6, 20)).First().Series.InWords);
    }

    [Fact]
    public void Noise_is_known_of_pH_and_of_three_nutrients_alone() =>
        Assert.Equal(
            [
                ReadingNoise.Ph,
                ReadingNoise.Ph,
                ReadingNoise.Unknown,
                ReadingNoise.Unknown,
                ReadingNoise.Nutrient,
                ReadingNoise.Nutrient,
                ReadingNoise.Unknown,
            ],
            ReadingSeries.Of(Report).Select(s => s.Series.Noise)
        );

    [Fact]
    public void A_trend_lays_out_its_ends_its_score_and_its_noise()
    {
        SoilReportEntry Sampled(int year, double ph) => new()
        {
            On = Books.Day(year, 3, 1),
            Plot = Books.North,
            Report = Books.Report(ph, 20),
        };
        var trends = ReadingTrend.All(
            PlotBook.Empty.With("a", Sampled(2019, 5.5), Sampled(2021, 5.8), Sampled(2023, 6.3)),
            Books.North
        );
        var work = trends.Single(t => t.What == "water pH").ShowWork();
        // From 5.5 to 6.3 in four years 0.2 a year; three rising pairs; 1.96 x root 2 x 0.1.
        Assert.Equal(
            ["Change in a year, first and last reading", "Change in a year", "Score", "Least change that is more than noise"],
            work.Select(l => l.Label)
        );
        Assert.Equal("(6.3 - 5.5) / 4 = 0.2", work[0].Numbers);
        Assert.EndsWith(" = 0.28 pH", work[3].Numbers, StringComparison.Ordinal);
        var still = trends.Single(t => t.What == "phosphorus");
        Assert.Equal(0.2772 * 20, still.LeastRealChange!.Value, 1e-3);
        Assert.Equal(4, still.ShowWork().Length);
    }

    [Fact]
    public void One_reading_has_no_change_and_no_working()
    {
        var one = new SoilReportEntry { On = Books.Day(2024, 3, 1), Plot = Books.North, Report = Report };
        var trends = ReadingTrend.All(PlotBook.Empty.With("a", one), Books.North);
        Assert.All(trends, t => Assert.Null(t.ChangePerYear));
        Assert.All(trends, t => Assert.Null(t.IsRealChange));
        Assert.All(trends, t => Assert.Empty(t.ShowWork()));
        Assert.Null(trends.Single(t => t.What == "boron").LeastRealChange);
        Assert.Equal(1, trends[0].LeastChance);
    }

    [Theory]
    [InlineData(6.27, false)]
    [InlineData(6.28, true)]
    [InlineData(5.72, true)]
    [InlineData(5.73, false)]
    public void A_change_is_real_where_it_is_more_than_the_noise_of_two_readings(double last, bool isReal)
    {
        SoilReportEntry Sampled(int year, double ph) => new()
        {
            On = Books.Day(year, 3, 1),
            Plot = Books.North,
            Report = Books.Report(ph, 20),
        };
        var trend = ReadingTrend.All(
            PlotBook.Empty.With("a", Sampled(2020, 6), Sampled(2024, last)),
            Books.North).Single(t => t.What == "water pH"
        );
        Assert.Equal(isReal, trend.IsRealChange);
        Assert.Equal(!isReal, trend.Findings.Any(f => f.Code == "record-change-is-noise"));
    }
}
