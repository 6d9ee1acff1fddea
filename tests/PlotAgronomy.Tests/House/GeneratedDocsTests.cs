using System.Text;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Reference;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.House;

/// <summary>Pages of docs/ that are written from the tables. Run with UPDATE_DOCS=1 to rewrite them.</summary>
[Trait("Category", "Generated")]
public class GeneratedDocsTests
{
    [Fact]
    public void The_list_of_findings_is_current() => AssertCurrent("docs/findings.md", Findings());

    [Fact]
    public void The_list_of_questions_is_current() => AssertCurrent("docs/questions.md", Questions());

    [Fact]
    public void The_list_of_sources_is_current() => AssertCurrent("docs/sources.md", Sources());

    [Fact]
    public void The_list_of_numbers_still_to_be_checked_is_current() => AssertCurrent("docs/numbers-to-check.md", NumbersToCheck());

    /// <summary>Holds a page against freshly generated text, or rewrites it when asked to.</summary>
    internal static void AssertCurrent(string page, string text)
    {
        string path = Repository.PathOf(page);
        if (Environment.GetEnvironmentVariable("UPDATE_DOCS") == "1")
        {
            File.WriteAllText(path, text);
        }

        Assert.True(File.Exists(path) && File.ReadAllText(path) == text, $"{page} is out of date: run the tests once with UPDATE_DOCS=1 and read the difference.");
    }

    private static string Findings()
    {
        var page = new StringBuilder("# Findings\n\nEvery caution the library can give. A code is stable: it is never renamed. Words in {braces} are filled in with the numbers at hand.\n\n| code | severity | about | text | source |\n|---|---|---|---|---|\n");
        foreach (var finding in FindingCatalog.Templates)
        {
            page.Append($"| `{finding.Code}` | {finding.Severity.ToString().ToLowerInvariant()} | {finding.Subject} | {finding.Text.Template} | {finding.Source.Id} |\n");
        }

        return page.ToString();
    }

    private static string Questions()
    {
        var page = new StringBuilder("# Questions\n\nEvery question the library can ask where a fact is missing. A code is stable: it is never renamed. Words in {braces} are filled in with what is at hand; plausible values that depend on the subject are not listed. The field is that of the [plan file](plan-file.md) that answers the question, `[*]` the item of a list that it is about (`PlanFile.FieldFor`); where none stands, the plot book, the weather or code answers it.\n\n| code | whom to ask | about | text | plausible | field |\n|---|---|---|---|---|---|\n");
        foreach (var question in QuestionCatalog.Templates)
        {
            string plausible = string.Join("; ", question.Plausible.Select(v => Amounts.Print(v, 2)));
            string field = QuestionFields.Paths.TryGetValue(question.Code, out string? path) ? $"`{path[2..]}`" : "";
            page.Append($"| `{question.Code}` | {OpenQuestion.WhomWords[question.Whom]} | {question.Subject} | {question.Text.Template} | {plausible} | {field} |\n");
        }

        return page.ToString();
    }

    private static string Sources()
    {
        var page = new StringBuilder("# Sources\n\nWhere the numbers come from. `PRACTICE` is common practice of the trade without an institution's publication.\n\n| id | title | publisher | edition |\n|---|---|---|---|\n");
        foreach (var source in Source.All)
        {
            string replaced = source.SupersededBy is null ? "" : $" (superseded by {source.SupersededBy})";
            page.Append($"| {source.Id} | {source.Title} | {source.Publisher} | {source.Edition}{replaced} |\n");
        }

        return page.ToString();
    }

    private static string NumbersToCheck()
    {
        var page = new StringBuilder("# Numbers still to be checked\n\nRows whose numbers were not yet seen in the publication they name (`memory`). They answer only when their method is asked for by name, and always with a finding. Compare with the printed table before relying on them.\n\n| table | rows from memory | of rows | sources |\n|---|---|---|---|\n");
        foreach (var tables in CsvTable.EmbeddedNames.Order(StringComparer.Ordinal).Select(n => CsvTable.Embedded(n)).GroupBy(t => Listed(t.Name)))
        {
            var rows = tables.SelectMany(table => table.Rows.Where(row => IsFromMemory(table, row)).Select(row => (Table: table, Row: row))).ToList();
            if (rows.Count > 0)
            {
                var sources = rows.SelectMany(r => Columns(r.Table, "source_id").Select(r.Row.TextOrNull).OfType<string>())
                    .SelectMany(ids => ids.Split(';')).Distinct().Order(StringComparer.Ordinal);
                page.Append($"| `{tables.Key}` | {rows.Count} | {tables.Sum(t => t.Rows.Length)} | {string.Join(", ", sources)} |\n");
            }
        }

        return page.ToString();
    }

    /// <summary>The kinds of seed, one file each, stand on the page as one table.</summary>
    private static string Listed(string table) => table.StartsWith("Seeds/Data/kinds/", StringComparison.Ordinal) ? "Seeds/Data/kinds/*.csv" : table;

    private static bool IsFromMemory(CsvTable table, CsvRow row) => Columns(table, "status").Any(c => row.TextOrNull(c) == "memory");

    private static IEnumerable<string> Columns(CsvTable table, string ending) => table.Header.Where(h => h.EndsWith(ending, StringComparison.Ordinal));
}
