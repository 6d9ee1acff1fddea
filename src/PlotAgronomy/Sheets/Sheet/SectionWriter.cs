using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Sheets;

/// <summary>Collects the blocks of one section; figures get the section's letter and a running number.</summary>
internal sealed class SectionWriter(string id, string heading, char letter)
{
    private readonly List<SheetBlock> blocks = [];
    private ImmutableArray<IWorkedResult> basis = [];
    private int figures;

    /// <summary>Names the results that all figures from here on rest on.</summary>
    internal void RestsOn(params ReadOnlySpan<IWorkedResult?> results)
    {
        var known = ImmutableArray.CreateBuilder<IWorkedResult>();
        foreach (var result in results)
        {
            if (result is not null)
            {
                known.Add(result);
            }
        }

        basis = known.ToImmutable();
    }

    internal void Say(string sentence) => blocks.Add(new SheetSentence { Text = sentence });

    internal void Remark(IEnumerable<(string Word, string Text)> remarks) =>
        blocks.Add(new SheetRemarks { Remarks = [.. remarks.Select(r => new SheetRemark { Word = r.Word, Text = r.Text })] });

    internal void Step(IEnumerable<string> steps) => blocks.Add(new SheetSteps { Steps = [.. steps] });

    internal void Figure(string label, FigureValue value, params ReadOnlySpan<IWorkedResult> results) =>
        blocks.Add(Make(label, value, [.. results], []));

    internal void Figure(string label, FigureValue value, WorkedLine line, params ReadOnlySpan<IWorkedResult> results) =>
        Figure(label, value, [line], results);

    internal void Figure(
        string label,
        FigureValue value,
        ImmutableArray<WorkedLine> lines,
        params ReadOnlySpan<IWorkedResult> results
    ) => blocks.Add(Make(label, value, [.. results], lines));

    /// <summary>A row of a table whose numbers are explained under a code of their own.</summary>
    internal SheetRow Row(
        string label,
        FigureValue value,
        ImmutableArray<string> cells,
        ImmutableArray<WorkedLine> lines,
        params ReadOnlySpan<IWorkedResult> results
    ) => new() { Cells = cells, Figure = Make(label, value, [.. results], lines) };

    internal void Table(ImmutableArray<string> columns, IEnumerable<SheetRow> rows)
    {
        var all = rows.ToImmutableArray();
        if (all.Length > 0)
        {
            blocks.Add(new SheetTable { Columns = columns, Rows = all });
        }
    }

    internal SheetSection Close() =>
        new()
        {
            Id = id,
            Heading = heading,
            Blocks = [.. blocks],
        };

    private SheetFigure Make(
        string label,
        FigureValue value,
        ImmutableArray<IWorkedResult> results,
        ImmutableArray<WorkedLine> lines
    )
    {
        figures++;
        return new SheetFigure
        {
            Code = string.Create(CultureInfo.InvariantCulture, $"{letter}{figures}"),
            Label = label,
            Value = value.Text,
            Amount = value.Amount,
            Results = results,
            RestsOn = basis,
            OwnLines = lines,
        };
    }
}
