using System.Text;
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
        var page = new StringBuilder("# Findings\n\nEvery caution the library can give. A code is stable: it is never renamed. Words in {braces} are filled in with the numbers at hand.\n\n| code | severity | text | source |\n|---|---|---|---|\n");
        foreach (var finding in FindingCatalog.All)
        {
            page.Append($"| `{finding.Code}` | {finding.Severity.ToString().ToLowerInvariant()} | {finding.Text} | {finding.SourceId} |\n");
        }

        return page.ToString();
    }

    private static string Sources()
    {
        var page = new StringBuilder("# Sources\n\nWhere the numbers come from. `PRACTICE` is common practice of the trade without an institution's publication.\n\n| id | title | institution | edition |\n|---|---|---|---|\n");
        foreach (var source in SourceCatalog.All)
        {
            string replaced = source.SupersededBy is null ? "" : $" (superseded by {source.SupersededBy})";
            page.Append($"| {source.Id} | {source.Title} | {source.Institution} | {source.Edition}{replaced} |\n");
        }

        return page.ToString();
    }

    private static string NumbersToCheck()
    {
        var page = new StringBuilder("# Numbers still to be checked\n\nRows whose numbers were not yet seen in the publication they name (`memory`). They answer only when their method is asked for by name, and always with a finding. Compare with the printed table before relying on them.\n\n| table | rows from memory | of rows | sources |\n|---|---|---|---|\n");
        foreach (string name in CsvTable.EmbeddedNames.Order(StringComparer.Ordinal))
        {
            var table = CsvTable.Embedded(name);
            var columns = table.Header.Where(h => h.EndsWith("status", StringComparison.Ordinal)).ToList();
            var rows = table.Rows.Where(r => columns.Any(c => r.TextOrNull(c) == "memory")).ToList();
            if (rows.Count > 0)
            {
                var sources = rows.SelectMany(r => table.Header.Where(h => h.EndsWith("source_id", StringComparison.Ordinal)).Select(r.TextOrNull).OfType<string>())
                    .SelectMany(ids => ids.Split(';')).Distinct().Order(StringComparer.Ordinal);
                page.Append($"| `{name}` | {rows.Count} | {table.Rows.Length} | {string.Join(", ", sources)} |\n");
            }
        }

        return page.ToString();
    }
}
