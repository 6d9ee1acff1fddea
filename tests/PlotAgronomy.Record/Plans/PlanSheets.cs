using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Record.Plans;

/// <summary>The printed side of a plan: its sheet and its comparisons, as digests and as cells.</summary>
internal static class PlanSheets
{
    private const int Width = 100;
    private const int DigestLength = 16;

    internal static void Record(Recorder to, string @case, PlotPlan plan, bool withLayout)
    {
        var sheet = FieldSheet.Of(plan.Solve());
        string words = Words(sheet);
        to.Add(@case, "sheet.digest", Digest(RenamedWords.AsRecorded(words)));
        to.Add(@case, "work.digest", Digest(string.Join('\n', sheet.Figures.SelectMany(f => f.ShowWork()))));
        var comparisons = Comparisons(plan).ToList();
        string compared = string.Join('\n', comparisons.Select(c => Words(c.Sheet)));
        to.Add(@case, "comparisons.digest", Digest(RenamedWords.AsRecorded(compared)));
        if (withLayout && KeepsItsLines(words))
        {
            to.Add(@case, "sheet.layout.digest", Digest(Layout(sheet)));
        }

        if (withLayout && KeepsItsLines(compared))
        {
            to.Add(@case, "comparisons.layout.digest", Digest(string.Join('\n', comparisons.Select(c => Layout(c.Sheet)))));
        }

        foreach (var (name, comparison) in withLayout ? comparisons : [])
        {
            Cells(to, @case, $"compare.{name}", comparison);
        }
    }

    /// <summary>A longer or shorter word moves the ends of lines: then only the words can be held against the record.</summary>
    private static bool KeepsItsLines(string words) => RenamedWords.AsRecorded(words) == words;

    /// <summary>The sign before the figures keeps a digest from being read as a number.</summary>
    internal static string Digest(string text) =>
        $"#{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..DigestLength]}";

    /// <summary>Every word of the sheet.</summary>
    /// <remarks>Laying it out for a terminal takes a hundred times as long and adds only line ends.</remarks>
    private static string Words(FieldSheet sheet) => sheet.ToMarkdown();

    private static string Layout(FieldSheet sheet) => sheet.ToText(Width);

    private static IEnumerable<(string Name, FieldSheet Sheet)> Comparisons(PlotPlan plan)
    {
        yield return ("systems", FieldSheet.Of(plan.CompareSystems(includeFromMemory: true)));
        yield return ("lime", FieldSheet.Of(plan.CompareLime(includeFromMemory: true)));
        if (!plan.KindsInSeveralLots.IsEmpty)
        {
            yield return ("lots", FieldSheet.Of(plan.CompareSeedLots()));
        }

        if (!plan.StoreBlends.IsEmpty)
        {
            yield return ("bags", FieldSheet.Of(plan.CompareStoreBlends()));
        }
    }

    private static void Cells(Recorder to, string @case, string meaning, FieldSheet sheet)
    {
        var rows = sheet.Sections.SelectMany(s => s.Blocks).OfType<SheetTable>().SelectMany(t => t.Rows);
        foreach (var (number, row) in rows.Index())
        {
            foreach (var (column, cell) in row.Cells.Index())
            {
                to.Add(@case, string.Create(CultureInfo.InvariantCulture, $"{meaning}[{number}][{column}]"), cell);
            }
        }
    }
}
