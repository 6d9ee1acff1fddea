using System.Text.RegularExpressions;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>The status of a check says how its expected value is known: <c>read</c>, seen printed in the publication; <c>secondary</c>, seen
/// as another quotes it; <c>computed</c>, a printed formula put through by hand, or worked by a second program; <c>memory</c>; <c>practice</c>.</summary>
public partial class CheckStatusTests
{
    private static IEnumerable<(string File, CsvTable Table, CsvRow Row)> Seen =>
        from path in Directory.EnumerateFiles(AppContext.BaseDirectory, "worked-*.csv", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(AppContext.BaseDirectory, path).Replace('\\', '/')
        let table = WorkedExamples.Table(file)
        from row in table.Rows
        where row.Text("status") is "read" or "secondary"
        select (file, table, row);

    [Fact]
    public void What_was_read_is_not_what_was_worked_out() =>
        Assert.Empty(Seen.Where(r => WorkedOut().IsMatch($"{r.Row.Text("title")}; {r.Row.Text("institution")}; {r.Row.TextOrNull("note")}")).Select(Name));

    [Fact]
    public void What_was_read_says_where_it_stands() =>
        Assert.Empty(Seen.Where(r => !HasPlace(r.Table, r.Row)).Select(Name));

    [Theory]
    [InlineData("no institution; ", true)]
    [InlineData("a university; printed 90 from 3 lb N/gal; recomputed", true)]
    [InlineData("a university; (120 - 90) x 4, hand algebra", true)]
    [InlineData("a university; 840 x 6.2", true)]
    [InlineData("a university; 33.75 + 55.5, printed 89.3", false)]
    [InlineData("a university; table 3, last row", false)]
    public void A_row_that_was_worked_out_is_known_by_its_words(string words, bool isWorkedOut) =>
        Assert.Equal(isWorkedOut, WorkedOut().IsMatch(words));

    private static bool HasPlace(CsvTable table, CsvRow row) =>
        table.Header.Contains("locator") && row.TextOrNull("locator") is not null;

    private static string Name((string File, CsvTable Table, CsvRow Row) at) => $"{at.File} {at.Row.Text("id")}";

    /// <summary>What tells that nobody printed the value: words for it, or a note that is nothing but a sum.</summary>
    [GeneratedRegex(@"no institution|computed|closed form|second (?:implementation|calculation|program)|constructed|solver|hand algebra|worked (?:by hand|apart)|answer cut off|backwards|arithmetic|; [0-9.,]+ x [0-9.,]+$")]
    private static partial Regex WorkedOut();
}
