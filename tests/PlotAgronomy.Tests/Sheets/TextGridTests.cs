using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Sheets;

public class TextGridTests
{
    [Fact]
    public void Cells_stand_in_columns_with_their_blanks()
    {
        var grid = new TextGrid(new(2, 1), new(0, 2, AlignsRight: true), new(0, 0));
        grid.Add("a", "1", "x");
        grid.Add("bcd", "200", "");
        Assert.Equal(["  a     1  x", "  bcd 200"], grid.Lines(40));
    }

    [Fact]
    public void A_row_is_as_high_as_its_highest_cell()
    {
        var grid = new TextGrid(new(0, 1, MayWrap: false), new(0, 0));
        grid.Add("L1", "one two three");
        grid.Add("L2", "four");
        Assert.Equal(["L1 one two", "   three", "L2 four"], grid.Lines(11));
    }

    [Fact]
    public void A_grid_without_rows_takes_no_line() => Assert.Empty(new TextGrid(new(2, 1), new(0, 0)).Lines(60));

    [Fact]
    public void It_says_how_wide_it_became()
    {
        var grid = new TextGrid(new(2, 1), new(0, 3));
        grid.Add("abc", "de");
        Assert.Single(grid.LinesOfRows(60, out int used));
        Assert.Equal(2 + 3 + 1 + 2 + 3, used);
    }
}
