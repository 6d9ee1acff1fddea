using PlotAgronomy.Land;
using UnitsNet;

namespace PlotAgronomy.Tests.Land;

/// <summary>Paces and counts as their owner writes them.</summary>
public class PaceTextTests
{
    [Theory]
    [InlineData("2.5 ft", "2.5 ft")]
    [InlineData("100 ft in 40 paces", "100 ft in 40 paces")]
    [InlineData("100 ft in 20 double paces", "100 ft in 40 paces")]
    [InlineData("300 ft in 118, 120 and 122 steps", "300 ft in 118, 120, 122 paces")]
    public void A_pace_is_written_as_it_was_found(string text, string written)
    {
        Assert.True(PaceText.TryRead(text, out var pace, out string problem), problem);
        Assert.Equal(written, PaceText.Print(pace!));
    }

    [Theory]
    [InlineData("0 ft in 40 paces", "above zero")]
    [InlineData("100 ft in 40 and 0 paces", "above zero")]
    [InlineData("0 ft", "above zero")]
    [InlineData("a stride", "100 ft in 40 paces")]
    public void A_pace_that_cannot_be_is_refused_with_what_is_expected(string text, string expected)
    {
        Assert.False(PaceText.TryRead(text, out var pace, out string problem));
        Assert.Null(pace);
        Assert.Contains(expected, problem, StringComparison.Ordinal);
        Assert.Contains($"'{text}'", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("57 paces", 57)]
    [InlineData(" 57.5 steps ", 57.5)]
    [InlineData("1 pace", 1)]
    [InlineData("20 double paces", 40)]
    public void A_length_counted_in_paces_has_so_many_single_steps(string text, double steps)
    {
        Assert.True(PaceText.TryReadCount(text, out var count));
        Assert.Equal(steps, count.SingleSteps);
    }

    [Theory]
    [InlineData("57")]
    [InlineData("57 ft")]
    [InlineData("paces")]
    [InlineData("")]
    [InlineData(null)]
    public void Other_lengths_are_not_counted_in_paces(string? text)
    {
        Assert.False(PaceText.TryReadCount(text, out var count));
        Assert.Equal(0, count.SingleSteps);
    }
}
