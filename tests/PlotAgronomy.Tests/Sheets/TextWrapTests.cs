using FsCheck;
using FsCheck.Xunit;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Sheets;

public class TextWrapTests
{
    [Fact]
    public void Text_that_fits_stays_as_it_is() => Assert.Equal(["  a  b "], TextWrap.Lines("  a  b ", 7));

    [Fact]
    public void Lines_break_between_words_and_keep_the_blank_there_where_it_fits() =>
        Assert.Equal(["one two", "three ", "four"], TextWrap.Lines("one two   three four", 8));

    [Fact]
    public void Blanks_within_a_line_are_kept() => Assert.Equal(["a   b c", "d"], TextWrap.Lines("a   b c d", 7));

    [Fact]
    public void Blanks_that_begin_the_text_are_kept() => Assert.Equal(["  one ", "two"], TextWrap.Lines("  one two", 7));

    [Fact]
    public void A_word_longer_than_a_line_begins_its_own_line_and_is_cut() =>
        Assert.Equal(["to ", "abcdefgh", "ijk now"], TextWrap.Lines("to abcdefghijk now", 8));

    [Fact]
    public void A_line_end_in_the_text_ends_a_line() => Assert.Equal(["a", "", "b"], TextWrap.Lines("a\r\n\nb", 8));

    [Fact]
    public void No_text_is_one_empty_line() => Assert.Equal([""], TextWrap.Lines("", 8));

    [Theory]
    [InlineData("cafe\u0301", 4)]
    [InlineData("\u7530\u3093\u307C", 6)]
    [InlineData("\U0001F33F leaf", 7)]
    [InlineData("na\u00EFve", 5)]
    public void Width_counts_columns_not_characters(string text, int columns) => Assert.Equal(columns, TextWrap.Longest(text));

    [Fact]
    public void A_letter_is_never_parted_from_its_mark_nor_cut_in_two() =>
        Assert.Equal(["ae\u0301", "\U0001F33F", "b"], TextWrap.Lines("ae\u0301\U0001F33Fb", 2));

    [Property]
    public void No_line_is_too_long_and_no_letter_is_lost(NonNull<string> written, PositiveInt width)
    {
        string text = string.Concat(written.Get.Where(char.IsAscii).Select(c => char.IsControl(c) ? ' ' : c));
        var lines = TextWrap.Lines(text, width.Get);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, width.Get));
        Assert.Equal(text.Replace(" ", "", StringComparison.Ordinal), string.Concat(lines).Replace(" ", "", StringComparison.Ordinal));
    }
}
