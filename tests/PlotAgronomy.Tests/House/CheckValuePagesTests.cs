using System.Globalization;
using System.Text;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Every value the tests hold the sums against, for anyone's own program: docs/check-values.csv, and docs/accuracy.md, which
/// counts them. Run with UPDATE_DOCS=1 to rewrite both.</summary>
[Trait("Category", "Generated")]
public class CheckValuePagesTests
{
    private const string Skipped = "skipped";

    private static readonly string[] OwnColumns =
        [.. WorkedExamples.RequiredColumns, "topic", "locator", "inputs"];

    private static IEnumerable<(string Room, string File, CsvTable Table)> Tables =>
        from path in Directory.EnumerateFiles(AppContext.BaseDirectory, "worked-*.csv", SearchOption.AllDirectories)
        let file = Path.GetRelativePath(AppContext.BaseDirectory, path).Replace('\\', '/')
        orderby file.Split('/')[0], file
        select (file.Split('/')[0], file, WorkedExamples.Table(file));

    [Fact]
    public void The_check_values_are_current() => GeneratedDocsTests.AssertCurrent("docs/check-values.csv", CheckValues());

    [Fact]
    public void The_page_of_accuracy_is_current() => GeneratedDocsTests.AssertCurrent("docs/accuracy.md", Accuracy());

    private static string CheckValues()
    {
        var page = new StringBuilder("data_version,room,table,id,topic,inputs,expected,tolerance,unit,title,institution,year,locator,status,reproduced,note\n");
        foreach (var (room, file, table) in Tables)
        {
            foreach (var row in table.Rows)
            {
                string[] fields =
                [
                    Source.DataVersion, room, Path.GetFileNameWithoutExtension(file), row.Text("id"), In(table, row, "topic"), Inputs(table, row),
                    row.TextOrNull("expected") ?? "", row.TextOrNull("tolerance") ?? "", row.TextOrNull("unit") ?? "", row.Text("title"), row.Text("institution"),
                    row.TextOrNull("year") ?? "", In(table, row, "locator"), row.Text("status"), In(table, row, "topic") == Skipped ? "no" : "yes", row.TextOrNull("note") ?? "",
                ];
                page.AppendJoin(',', fields.Select(Quoted)).Append('\n');
            }
        }

        return page.ToString();
    }

    private static string Accuracy()
    {
        var page = new StringBuilder(
            "# Accuracy\n\nEvery value in [check-values.csv](check-values.csv) is held by a test within the tolerance beside it; one that is not reproduced is marked there and named below. "
            + "Printed are values seen in a publication or as another quotes it; computed apart are printed formulas put through by hand, closed forms, second implementations and general solvers; "
            + "practice and memory are what they say. A tolerance is the rounding of the print, or the reason stands in the note.\n\n"
            + "| room | values | printed | computed apart | practice | memory | reproduced |\n|---|---|---|---|---|---|---|\n");
        var rows = Tables.SelectMany(t => t.Table.Rows.Select(r => (t.Room, t.File, t.Table, Row: r))).ToList();
        foreach (var room in rows.GroupBy(r => r.Room))
        {
            page.Append(Counted(room.Key, [.. room.Select(r => (r.Table, r.Row))]));
        }

        page.Append(Counted("all", [.. rows.Select(r => (r.Table, r.Row))]));
        page.Append("\n## Not reproduced\n\n| room | value | publication | why |\n|---|---|---|---|\n");
        foreach (var (room, _, table, row) in rows.Where(r => In(r.Table, r.Row, "topic") == Skipped))
        {
            page.Append($"| {room} | {row.Text("id")} | {row.Text("title")}, {row.Text("institution")} | {row.Text("note").Replace("skipped: ", "", StringComparison.Ordinal)} |\n");
        }

        return page.ToString();
    }

    private static string Counted(string room, IReadOnlyCollection<(CsvTable Table, CsvRow Row)> rows)
    {
        int Of(Func<CsvRow, bool> which) => rows.Count(r => which(r.Row));
        int held = rows.Count(r => In(r.Table, r.Row, "topic") != Skipped);
        string share = (100.0 * held / rows.Count).ToString("0.0", CultureInfo.InvariantCulture);
        return $"| {room} | {rows.Count} | {Of(r => r.Text("status") is "read" or "secondary")} | {Of(r => r.Text("status") == "computed")} "
            + $"| {Of(r => r.Text("status") == "practice")} | {Of(r => r.Text("status") == "memory")} | {held} ({share} %) |\n";
    }

    private static string In(CsvTable table, CsvRow row, string column) => table.Header.Contains(column) ? row.TextOrNull(column) ?? "" : "";

    private static string Inputs(CsvTable table, CsvRow row) =>
        string.Join("; ", table.Header.Except(OwnColumns).Where(c => row.TextOrNull(c) is not null).Select(c => $"{c} {row.Text(c)}").Prepend(In(table, row, "inputs")).Where(t => t.Length > 0));

    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny(",\"\n") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
