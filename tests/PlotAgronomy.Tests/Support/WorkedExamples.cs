using System.Collections.Concurrent;
using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Tests.Support;

/// <summary>Published values and cases of practice, kept in CSV files beside the tests: <c>Liming/worked-lime.csv</c>.</summary>
/// <remarks>Every worked file has at least the columns id, title, institution, year, status, expected, tolerance, unit, note.</remarks>
internal static class WorkedExamples
{
    internal static readonly string[] RequiredColumns = ["id", "title", "institution", "year", "status", "expected", "tolerance", "unit", "note"];

    private static readonly ConcurrentDictionary<string, CsvTable> Tables = new();

    internal static CsvTable Table(string file) => Tables.GetOrAdd(file, f =>
        CsvTable.Parse(f, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, f))));

    /// <summary>Ids of a file for a theory, optionally of one topic only.</summary>
    internal static TheoryData<string> Ids(string file, string? topic = null) =>
        [.. Table(file).Rows.Where(r => topic is null || r.Text("topic") == topic).Select(r => r.Text("id"))];

    internal static CsvRow Find(string file, string id) => Table(file).Rows.Single(r => r.Text("id") == id);

    /// <summary>Asserts that every row that is not tested says why.</summary>
    internal static void AssertSkippedRowsSayWhy(string file) =>
        Assert.All(Table(file).Rows.Where(r => r.Text("topic") == "skipped"), r => Assert.StartsWith("skipped: ", r.Text("note"), StringComparison.Ordinal));

    /// <summary>Asserts the row's expected number within the row's tolerance.</summary>
    internal static void AssertMatches(CsvRow row, double actual)
    {
        Note(row, actual);
        Assert.True(Math.Abs(actual - row.Number("expected")) <= row.Number("tolerance") + 1e-12 * Math.Abs(row.Number("expected")),
            $"{row.Text("id")}: expected {row.Text("expected")} +- {row.Text("tolerance")} {row.TextOrNull("unit")}, got {actual:R}");
    }

    /// <summary>Keeps an answer that is asserted by other means, for the record of all answers.</summary>
    internal static void Note(CsvRow row, params ReadOnlySpan<double> actual)
    {
        foreach (double one in actual)
        {
            Note(row, one.ToString("R", CultureInfo.InvariantCulture));
        }
    }

    internal static void Note(CsvRow row, string actual)
    {
        if (ExampleRecord.IsWanted)
        {
            ExampleRecord.Note(Tables.Values.Single(t => t.Rows.Contains(row)).Name, row.Text("id"), actual);
        }
    }
}
