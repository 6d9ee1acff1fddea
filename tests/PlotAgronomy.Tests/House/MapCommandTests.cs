using PlotAgronomy.Map;

namespace PlotAgronomy.Tests.House;

/// <summary>Wrong use of the map is one line and exit code 2.</summary>
public class MapCommandTests
{
    [Theory]
    [InlineData("")]
    [InlineData("streets")]
    [InlineData("rooms twice")]
    [InlineData("path Fraction.FromPercent")]
    public void Wrong_words_are_answered_with_one_line(string words)
    {
        var output = new StringWriter();
        var complaints = new StringWriter();
        string[] given = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, MapCommands.Run(given, output, complaints));
        Assert.Empty(output.ToString());
        Assert.Matches("^Say one of: rooms, [^\n]*\n$", complaints.ToString().ReplaceLineEndings("\n"));
    }
}
