using System.Collections.Immutable;

namespace PlotAgronomy.Sheets;

/// <summary>The rows of the shopping list; what comes from the shed stands in a column of its own, where anything does.</summary>
internal sealed class ShoppingRows(SectionWriter sheet, PlotPlan plan)
{
    private readonly List<(ShoppingLine Line, SheetRow Row)> rows = [];

    internal bool IsEmpty => rows.Count == 0;

    internal void Add(string code, string item, ShoppingLine line, params ReadOnlySpan<IWorkedResult> because)
    {
        string said = line.FromShed is { } taken ? $"{taken} from the shed, none bought" : line.Packages;
        var value = new FigureValue(said, SheetAmount.Money(line.Cost, plan.Currency));
        rows.Add((line, sheet.Row(code, item, value, [item, plan.Currency.Print(line.Cost)], [], because)));
    }

    /// <summary>The table with its sum.</summary>
    internal void Close(string all, FigureValue total, WorkedLine sum)
    {
        bool hasShed = rows.Any(r => r.Line.FromShed is not null);
        sheet.Table(
            hasShed ? ["item", "from the shed", "to buy", "cost"] : ["item", "packages", "cost"],
            [
                .. rows.Select(r => With(r.Row, [r.Row.Cells[0], .. Amounts(r.Line, hasShed), r.Row.Cells[1]])),
                sheet.Row("buy.all", all, total, [all, .. hasShed ? [""] : ImmutableArray<string>.Empty, "", total.Text], [sum]),
            ]
        );
    }

    private static IEnumerable<string> Amounts(ShoppingLine line, bool hasShed) =>
        !hasShed ? [line.Packages]
        : line.FromShed is { } taken ? [taken, "-"]
        : ["-", line.Packages];

    private static SheetRow With(SheetRow row, ImmutableArray<string> cells) => new() { Cells = cells, Figure = row.Figure };
}
