using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

public class CsvTableTests
{
    [Fact]
    public void Reads_quotes_commas_and_line_ends()
    {
        var table = CsvTable.Parse("t.csv", "id,text\r\na,\"x, \"\"y\"\"\"\r\nb,z\n");
        Assert.Equal(["x, \"y\"", "z"], table.Rows.Select(r => r.Text("text")));
        Assert.Equal(3, table.Rows[1].Line);
    }

    [Theory]
    [InlineData("id,id\n1,2\n", "stands twice")]
    [InlineData("id,text\n1\n", "expected 2 fields")]
    [InlineData("id,text\n1,\"open\n", "not closed")]
    [InlineData("id,text\n1,\"a\"b\n", "after a closing quote")]
    [InlineData("id,text\n1,a\"b\n", "may only open")]
    [InlineData("", "header")]
    public void A_broken_table_names_file_and_line(string text, string problem)
    {
        var error = Assert.Throws<DataFormatException>(() => CsvTable.Parse("t.csv", text));
        Assert.Contains("t.csv, line", error.Message, StringComparison.Ordinal);
        Assert.Contains(problem, error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1,5")]
    [InlineData("NaN")]
    [InlineData("x")]
    public void A_number_that_is_none_names_file_line_and_field(string text)
    {
        var row = CsvTable.Parse("t.csv", $"id,value\n1,\"{text}\"\n").Rows[0];
        var error = Assert.Throws<DataFormatException>(() => row.Number("value"));
        Assert.Equal(("t.csv", 2, "value"), (error.File, error.Line, error.Field));
    }

    [Fact]
    public void A_status_is_one_of_three()
    {
        var row = CsvTable.Parse("t.csv", "id,status\n1,guessed\n").Rows[0];
        Assert.Throws<DataFormatException>(() => row.Status());
    }

    [Fact]
    public void A_value_with_braces_is_kept_as_it_is() =>
        Assert.Contains("{source} {x (SRC)", FindingCatalog.Create("data-from-memory", ("method", "{source} {x"), ("source", "SRC")).Text, StringComparison.Ordinal);

    [Fact]
    public void A_finding_fills_every_place_and_no_other()
    {
        var finding = FindingCatalog.Create("data-from-memory", ("method", "a method"), ("source", "SRC"));
        Assert.Contains("a method (SRC)", finding.Text, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => FindingCatalog.Create("data-from-memory", ("method", "m")));
        Assert.Throws<InvalidOperationException>(() => FindingCatalog.Create("data-from-memory", ("method", "m"), ("source", "s"), ("other", "x")));
        Assert.Throws<KeyNotFoundException>(() => FindingCatalog.Create("no-such-code"));
    }

    [Fact]
    public void Sources_are_found_by_id_only()
    {
        Assert.Equal("DEF-UNITS", Source.Find("DEF-UNITS").Id);
        Assert.Throws<KeyNotFoundException>(() => Source.Find("DEF-NOTHING"));
    }
}
