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
            Title = plots.Length == 1
                ? $"{first.Plot}: what the book says up to {SheetText.Date(first.On)}"
                : $"What the book says up to {SheetText.Date(first.On)}",
            Sections =
            [
                .. plots.Select(Plot),
                .. plots.Length == 1 ? [Entries(first)] : Enumerable.Empty<SheetSection>(),
                .. first.Remarks.IsEmpty ? Enumerable.Empty<SheetSection>() : [Remarks(first)],
            ],
            Findings = Finding.InOrder([.. plots.SelectMany(p => p.Findings).Distinct()]),
            Sources = [.. plots.SelectMany(p => p.Sources).Distinct()],
        };
    }

    private static SheetSection Plot(PlotHistory plot)
    {
        var sheet = new SectionWriter(FigureCode.Word(plot.Plot), $"{plot.Plot}, {Amounts.Print(plot.Area, "ac", 2)}");
        sheet.Say($"Done: {HistoryWords.Done(plot)}.");
        sheet.Say($"Owed: {HistoryWords.Owed(plot.Owed)}.");
        foreach (string line in HistoryWords.Soil(plot).Concat(HistoryWords.Grown(plot)))
        {
            sheet.Say(line);
        }

        var told = plot.Next.Findings;
        if (told.IsEmpty)
        {
            sheet.Say("Next year: the book asks for no change.");
        }
        else
        {
            sheet.Remark(told.Select(f => ("Next year", f.Text)));
        }

        return sheet.Close();
    }

    private static SheetSection Entries(PlotHistory plot)
    {
        var sheet = new SectionWriter("entries", "Entries");
        sheet.Table(
            ["entry", "day", "what"],
            plot.Done.Select(e => new SheetRow { Cells = [e.Id ?? "-", SheetText.Date(e.On), e.InWords] })
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
