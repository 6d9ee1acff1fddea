using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;
using Spectre.Console;

namespace PlotAgronomy.Sample.Output;

/// <summary>How one number of a sheet was reached: for each line its formula, numbers, source, place there and status.</summary>
internal static class Explanation
{
    internal static string Render(SheetFigure figure, int? width)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var console = ConsoleStreams.Layout(writer, width);
        console.Write(new Padder(new Text($"{figure.Code}  {figure.Label}: {figure.Value}"), new Padding(0, 0, 0, 0)));
        foreach (var line in figure.ShowWork())
        {
            console.WriteLine();
            console.Write(new Padder(new Text(line.Label), new Padding(0, 0, 0, 0)));
            WriteRows(console, RowsOf(line));
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
        if (line.Origin is not { } origin)
        {
            yield return ("source", "arithmetic");
            yield break;
        }

        string word = "source";
        foreach (var source in origin.Sources)
        {
            yield return (word, source.ToString());
            word = "";
        }

        if (origin.Locator.Length > 0)
        {
            yield return (origin.Status == DataStatus.Practice ? "namely" : "where", origin.Locator);
        }

        yield return ("status", LineStatuses[origin.Status]);
    }

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
