using System.Collections.Immutable;
using PlotAgronomy.Records;

namespace PlotAgronomy.Sheets;

/// <summary>What the book tells, in a few lines a plot; with one plot alone, its entries too.</summary>
internal static class HistorySheet
{
    internal static FieldSheet Write(ImmutableArray<PlotHistory> plots)
    {
        var first = plots[0];
        return new()
        {
            Title =
                plots.Length == 1
                    ? $"{first.Plot}: what the book says up to {SheetText.Date(first.On)}"
                    : $"What the book says up to {SheetText.Date(first.On)}",
            Sections =
            [
                .. plots.Select(Plot),
                .. RankingSection.Of(first),
                .. plots.Length == 1 ? [Entries(first)] : Enumerable.Empty<SheetSection>(),
                .. first.Remarks.IsEmpty ? Enumerable.Empty<SheetSection>() : [Remarks(first)],
            ],
            Findings = [.. plots.SelectMany(p => p.Findings).Distinct().OrderByDescending(f => f.Severity)],
            Sources = [.. plots.SelectMany(p => p.Sources).Distinct()],
        };
    }

    private static SheetSection Plot(PlotHistory plot)
    {
        var sheet = new SectionWriter(FigureCode.Word(plot.Plot), $"{plot.Plot}, {Amounts.Print(plot.Area, "ac", 2)}");
        sheet.Say(HistoryWords.Done(plot));
        sheet.Say(HistoryWords.Owed(plot.Owed));
        foreach (string line in HistoryWords.Soil(plot).Concat(HistoryWords.Grown(plot)))
        {
            sheet.Say(line);
        }

        sheet.Say(plot.Advice.IsEmpty ? "Next year: the book asks for no change." : "Next year:");
        sheet.Step(plot.Advice.Select(f => f.Text));
        return sheet.Close();
    }

    private static SheetSection Entries(PlotHistory plot)
    {
        var sheet = new SectionWriter("entries", "Entries");
        sheet.Table(
            ["entry", "day", "what"],
            plot.Lines.Select(l => new SheetRow { Cells = [l.Name, SheetText.Date(l.On), l.Words] })
        );
        return sheet.Close();
    }

    private static SheetSection Remarks(PlotHistory plot)
    {
        var sheet = new SectionWriter("book", "The book itself");
        sheet.Remark(plot.Remarks.Select(f => (f.Severity.ToString(), f.Text)));
        return sheet.Close();
    }
}
