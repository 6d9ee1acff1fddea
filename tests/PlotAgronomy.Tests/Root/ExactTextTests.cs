using FsCheck.Xunit;

namespace PlotAgronomy.Tests.Root;

public class ExactTextTests
{
    [Theory]
    [InlineData(0, "0"), InlineData(20, "20"), InlineData(1.5e20, "150000000000000000000"), InlineData(1e-7, "0.0000001")]
    [InlineData(0.1, "0.1"), InlineData(-12.25, "-12.25"), InlineData(0.30000000000000004, "0.30000000000000004")]
    public void Every_digit_is_written_without_an_exponent(double value, string text) => Assert.Equal(text, ExactText.Of(value));

    [Theory]
    [InlineData(0.85, "85"), InlineData(1, "100"), InlineData(0.0005, "0.05"), InlineData(0, "0"), InlineData(0.07, "7")]
    public void A_part_of_one_is_written_as_percent(double value, string text) => Assert.Equal(text, ExactText.Of(value, shift: 2));

    [Property(MaxTest = 1000)]
    public void Whatever_is_written_reads_back(double value, bool percent)
    {
        if (Math.Abs(value) < 1e300)
        {
            int shift = percent ? 2 : 0;
            Assert.Equal(value, ExactText.Number(ExactText.Of(value, shift), shift));
        }
    }

    [Theory]
    [InlineData(double.MaxValue), InlineData(double.Epsilon), InlineData(-1.7976931348623157E+308), InlineData(2.2250738585072014E-308), InlineData(1.2345678901234567e-20)]
    public void Even_the_largest_and_the_smallest_read_back(double value) => Assert.Equal(value, ExactText.Number(ExactText.Of(value)));

    [Theory]
    [InlineData(""), InlineData("1,5"), InlineData("1e3"), InlineData("NaN"), InlineData(" 1"), InlineData("one")]
    public void Anything_else_is_refused(string text) => Assert.Throws<FormatException>(() => ExactText.Number(text));
}
