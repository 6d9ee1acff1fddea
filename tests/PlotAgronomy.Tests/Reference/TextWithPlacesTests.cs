using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

public class TextWithPlacesTests
{
    /// <summary>English grammar: one day, no days, 1,200 days.</summary>
    [Theory]
    [InlineData("1", "1 day to a freeze on 1 November")]
    [InlineData("0", "0 days to a freeze on 1 November")]
    [InlineData("1,200", "1,200 days to a freeze on 1 November")]
    public void A_word_behind_a_number_is_in_its_number(string days, string expected) =>
        Assert.Equal(expected, new TextWithPlaces("{days} day(s) to a freeze on {date}").Filled(("days", days), ("date", "1 November")));

    /// <summary>A person's own words stay as they are.</summary>
    [Fact]
    public void A_value_is_not_rewritten() =>
        Assert.Equal("2 bags of lime(s)", new TextWithPlaces("{count} bag(s) of {name}").Filled(("count", "2"), ("name", "lime(s)")));
}
