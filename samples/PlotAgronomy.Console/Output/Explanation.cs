using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using Spectre.Console;

namespace PlotAgronomy.Sample.Output;

/// <summary>How one number of a sheet was reached: each line once with its formula and numbers, then every publication once with
/// page or table and status.</summary>
internal static class Explanation
{
    internal static string Render(SheetFigure figure, int? width)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var console = ConsoleStreams.Layout(writer, width);
        console.Write(new Padder(new Text($"{figure.Code}  {figure.Label}: {figure.Value}"), new Padding(0, 0, 0, 0)));
        var lines = figure.ShowWork().Distinct().ToList();
        foreach (var line in lines)
        {
            console.WriteLine();
            console.Write(new Padder(new Text(line.Label), new Padding(0, 0, 0, 0)));
            WriteRows(console, RowsOf(line));
        }

        foreach (var rows in Publications(lines.Select(l => l.Origin).OfType<Origin>()))
        {
            console.WriteLine();
            WriteRows(console, rows);
        }

        console.WriteLine();
        console.WriteLine("The number as a whole");
        WriteRows(console, figure.Unchecked.Select(remark => ("", remark)).Prepend(("status", WholeStatuses[figure.Status])));
        return Trimmed(writer);
    }

    private static readonly Dictionary<DataStatus, string> LineStatuses = new()
    {
        [DataStatus.Read] = "seen in the publication",
        [DataStatus.Secondary] = "seen as quoted in the publication named, not in the original itself",
        [DataStatus.Memory] = "from memory: not yet seen in the publication; compare with the printed text",
        [DataStatus.Practice] = "common practice, no institution behind it",
    };

    private static readonly Dictionary<DataStatus, string> WholeStatuses = new()
    {
        [DataStatus.Read] = "all it rests on was seen in the publications named",
        [DataStatus.Secondary] = "all it rests on was seen in print, some of it as another publication quotes it",
        [DataStatus.Memory] = "it rests on numbers from memory, not yet seen in their publication:",
        [DataStatus.Practice] = "common practice, no institution behind it",
    };

    private static IEnumerable<(string Word, string Text)> RowsOf(WorkedLine line)
    {
        yield return ("formula", line.Formula);
        yield return ("numbers", line.Numbers);
        yield return ("source", line.Origin is { } origin ? string.Join(", ", origin.Sources.Select(s => s.Id)) : "arithmetic");
    }

    /// <summary>Each publication, or set of them, with every page or table that was used, and whether it was seen.</summary>
    private static IEnumerable<IEnumerable<(string Word, string Text)>> Publications(IEnumerable<Origin> origins) =>
        origins
            .GroupBy(o => (Ids: string.Join(' ', o.Sources.Select(s => s.Id)), o.Status))
            .Select(alike =>
                alike
                    .First()
                    .Sources.Select((source, i) => (i == 0 ? "source" : "", source.ToString()))
                    .Concat(
                        alike
                            .Select(o => o.Locator)
                            .Where(l => l.Length > 0)
                            .Distinct()
                            .Select(
                                (where, i) =>
                                    (
                                        i > 0 ? ""
                                        : alike.Key.Status == DataStatus.Practice ? "namely"
                                        : "where",
                                        where
                                    )
                            )
                    )
                    .Append(("status", LineStatuses[alike.Key.Status]))
            );

    /// <summary>What was laid out, without the blanks that fill its columns.</summary>
    private static string Trimmed(StringWriter laidOut) =>
        string.Join('\n', laidOut.ToString().ReplaceLineEndings("\n").Split('\n').Select(l => l.TrimEnd()));

    private static void WriteRows(IAnsiConsole console, IEnumerable<(string Word, string Text)> rows)
    {
        var grid = new Grid()
            .AddColumn(new GridColumn().NoWrap().PadLeft(2).PadRight(2).Width(7))
            .AddColumn(new GridColumn().PadLeft(0).PadRight(0));
        foreach (var (word, text) in rows)
        {
            grid.AddRow(new Text(word), new Text(text));
        }

        console.Write(grid);
    }
}
