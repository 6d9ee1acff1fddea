using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Reference;

/// <summary>The one mechanism behind every table and catalog.</summary>
public class TableTests
{
    private const string Header = "id,value,source_id,locator,status\n";

    private static double[] Read(string rows, Func<CsvRow, double>? map = null) =>
        [.. Table.Read(CsvTable.Parse("sample.csv", Header + rows), map ?? (r => r.Number("value")))];

    private static DataFormatException Fault(string rows) =>
        Assert.Throws<DataFormatException>(() => Table.Check(CsvTable.Parse("sample.csv", Header + rows)));

    [Fact]
    public void A_table_gives_its_rows_in_order() => Assert.Equal([2, 1], Read("b,2,PRACTICE,,practice\na,1,PRACTICE,,practice\n"));

    [Fact]
    public void A_column_that_nobody_reads_is_an_error() =>
        Assert.Equal("value", Assert.Throws<DataFormatException>(() => Read("a,1,PRACTICE,,practice\n", _ => 0)).Field);

    [Fact]
    public void A_column_that_is_not_there_is_an_error() =>
        Assert.Equal("rate", Assert.Throws<DataFormatException>(() => Read("a,1,PRACTICE,,practice\n", r => r.Number("rate"))).Field);

    [Fact]
    public void An_id_stands_once() =>
        Assert.Equal("id", Fault("a,1,PRACTICE,,practice\na,2,PRACTICE,,practice\n").Field);

    [Fact]
    public void A_number_that_was_read_has_a_place_in_its_publication() =>
        Assert.Equal("locator", Fault("a,1,SOIL-NC1,,read\n").Field);

    [Fact]
    public void A_number_seen_as_quoted_elsewhere_names_the_quoting_page_and_answers_like_one_that_was_read()
    {
        Assert.Equal("locator", Fault("a,1,SOIL-NC1,,secondary\n").Field);
        Assert.Equal([1], Read("a,1,SOIL-NC1,table 2 of a circular that prints it,secondary\n"));
        var catalog = new Catalog<string>("word", () => ["one", "two"], w => w, w => w == "two" ? DataStatus.Secondary : DataStatus.Memory);
        Assert.Equal(["two"], catalog.All);
    }

    [Fact]
    public void The_working_says_that_a_number_was_seen_as_quoted_elsewhere()
    {
        Assert.EndsWith("[SOIL-NC1, secondary]", new WorkedLine("Rate", "a x b", "2 x 3 = 6", new(Source.Find("SOIL-NC1"), DataStatus.Secondary, "circular 5")).ToString(), StringComparison.Ordinal);
        Assert.EndsWith("[SOIL-NC1]", new WorkedLine("Rate", "a x b", "2 x 3 = 6", new(Source.Find("SOIL-NC1"), DataStatus.Read, "table 1")).ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(DataStatus.Read, DataStatus.Secondary, DataStatus.Secondary), InlineData(DataStatus.Practice, DataStatus.Secondary, DataStatus.Practice)]
    [InlineData(DataStatus.Practice, DataStatus.Memory, DataStatus.Memory), InlineData(DataStatus.Read, DataStatus.Read, DataStatus.Read)]
    public void An_answer_is_known_as_well_as_its_weakest_number(DataStatus one, DataStatus other, DataStatus answer)
    {
        Assert.Equal(answer, DataStatuses.WeakestOf(one, other));
        Assert.Equal(answer, DataStatuses.WeakestOf(other, one));
    }

    [Theory]
    [InlineData("memory", true), InlineData("half-known", false), InlineData("Memory", false), InlineData("me-mory", false)]
    public void A_word_that_is_no_value_of_an_enumeration_is_an_error(string word, bool known)
    {
        var row = CsvTable.Parse("sample.csv", $"status\n{word}\n").Rows[0];
        if (known)
        {
            Assert.Equal(DataStatus.Memory, row.Choice<DataStatus>("status"));
        }
        else
        {
            Assert.Throws<DataFormatException>(() => row.Choice<DataStatus>("status"));
        }
    }

    [Fact]
    public void A_catalog_that_does_not_know_an_id_lists_what_there_is()
    {
        var catalog = new Catalog<string>("word", () => ["one", "two"], w => w, w => w == "two" ? DataStatus.Memory : DataStatus.Read);
        Assert.False(catalog.TryFind("three", out _, out string problem));
        Assert.Equal("No word has the id 'three'. There are: one, two.", problem);
        Assert.Equal(problem, Assert.Throws<KeyNotFoundException>(() => catalog.Find("three")).Message);
        Assert.Equal("two", catalog.Find("two"));
        Assert.Equal(["one"], catalog.All);
        Assert.Equal(["two"], catalog.Unchecked);
    }
}
