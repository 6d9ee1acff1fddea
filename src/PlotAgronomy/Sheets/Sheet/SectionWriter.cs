using System.Collections.Immutable;
using System.Globalization;

namespace PlotAgronomy.Sheets;

/// <summary>Collects the blocks of one section.</summary>
internal sealed class SectionWriter(string id, string heading, SheetPart part = SheetPart.Body)
{
    private readonly List<SheetBlock> blocks = [];
    private ImmutableArray<IWorkedResult> basis = [];
    private readonly HashSet<string> codes = new(StringComparer.OrdinalIgnoreCase);

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
        Add(new SheetRemarks { Remarks = [.. remarks.Select(r => new SheetRemark { Word = r.Word, Text = r.Text })] });

    internal void Step(IEnumerable<string> steps) => Add(new SheetSteps { Steps = [.. steps] });

    internal void Figure(string code, string label, FigureValue value, params ReadOnlySpan<IWorkedResult> results) =>
        blocks.Add(Make(code, label, value, [.. results], []));

    internal void Figure(
        string code,
        string label,
        FigureValue value,
        WorkedLine line,
        params ReadOnlySpan<IWorkedResult> results
    ) => Figure(code, label, value, [line], results);

    internal void Figure(
        string code,
        string label,
        FigureValue value,
        ImmutableArray<WorkedLine> lines,
        params ReadOnlySpan<IWorkedResult> results
    ) => blocks.Add(Make(code, label, value, [.. results], lines));

    /// <summary>A row of a table whose numbers are explained under a code of their own.</summary>
    internal SheetRow Row(
        string code,
        string label,
        FigureValue value,
        ImmutableArray<string> cells,
        ImmutableArray<WorkedLine> lines,
        params ReadOnlySpan<IWorkedResult> results
    ) => new() { Cells = cells, Figure = Make(code, label, value, [.. results], lines) };

    internal void Table(ImmutableArray<string> columns, IEnumerable<SheetRow> rows)
    {
        var all = rows.ToImmutableArray();
        if (all.Length > 0)
        {
            blocks.Add(new SheetTable { Columns = columns, Rows = all });
        }
    }

    internal void Draw(string svg, string caption) => blocks.Add(new SheetDrawing { Svg = svg, Caption = caption });

    /// <summary>Whether nothing was said yet.</summary>
    internal bool IsEmpty => blocks.Count == 0;

    /// <summary>The section; null where there is nothing in it.</summary>
    internal SheetSection? CloseOrNone() => IsEmpty ? null : Close();

    internal SheetSection Close() =>
        new()
        {
            Part = part,
            Id = id,
            Heading = heading,
            Blocks = [.. blocks],
        };

    private void Add(SheetRemarks remarks)
    {
        if (!remarks.Remarks.IsEmpty)
        {
            blocks.Add(remarks);
        }
    }

    private void Add(SheetSteps steps)
    {
        if (!steps.Steps.IsEmpty)
        {
            blocks.Add(steps);
        }
    }

    private SheetFigure Make(
        string code,
        string label,
        FigureValue value,
        ImmutableArray<IWorkedResult> results,
        ImmutableArray<WorkedLine> lines
    ) =>
        new()
        {
            Code = Own(code),
            Label = label,
            Value = value.Text,
            Amount = value.Amount,
            Results = results,
            RestsOn = basis,
            OwnLines = lines,
        };

    /// <summary>Only what has the very name of another is told apart by its place.</summary>
    private string Own(string code)
    {
        string own = code;
        for (int place = 2; !codes.Add(own); place++)
        {
            own = string.Create(CultureInfo.InvariantCulture, $"{code}-{place}");
        }

        return own;
    }
}
