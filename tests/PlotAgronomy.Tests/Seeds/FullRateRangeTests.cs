using PlotAgronomy.Seeds;

namespace PlotAgronomy.Tests.Seeds;

/// <summary>Which full rate is taken of a printed range: the median of three publications and more, else the lowest, but no less than what
/// is printed for a drill (docs/design.md, practice).</summary>
public class FullRateRangeTests
{
    private static PureLiveSeedRateRange Printed(double? median, double? drilled) => PureLiveSeedRateRange.Printed(
        PureLiveSeedRate.BroadcastPoundsPerAcre(4),
        PureLiveSeedRate.BroadcastPoundsPerAcre(10),
        median,
        drilled is { } pounds ? PureLiveSeedRate.DrilledPoundsPerAcre(pounds) : null);

    [Theory]
    [InlineData(7.0, null, 7, false)]
    [InlineData(7.0, 8.0, 7, false)]
    [InlineData(null, null, 4, false)]
    [InlineData(null, 3.0, 4, false)]
    [InlineData(null, 4.0, 4, false)]
    [InlineData(null, 6.0, 6, true)]
    [InlineData(null, 12.0, 10, true)]
    public void The_lowest_is_raised_to_the_drilled_rate_where_no_median_stands(double? median, double? drilled, double full, bool isRaised)
    {
        var range = Printed(median, drilled);
        Assert.Equal(full, range.Full.PoundsPerAcre, 1e-12);
        Assert.Equal(isRaised ? drilled : null, range.RaisedBy?.PoundsPerAcre);
        Assert.Equal(median is null ? FullRateChoice.Lowest : FullRateChoice.Median, range.Choice);
    }

    [Fact]
    public void A_range_that_begins_with_nothing_is_refused() =>
        Assert.Equal("low", Assert.Throws<ArgumentOutOfRangeException>(() =>
            PureLiveSeedRateRange.Between(PureLiveSeedRate.BroadcastPoundsPerAcre(0), PureLiveSeedRate.BroadcastPoundsPerAcre(8))).ParamName);
}
