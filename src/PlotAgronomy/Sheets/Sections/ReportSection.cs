using PlotAgronomy.Nutrients;

namespace PlotAgronomy.Sheets;

/// <summary>What the laboratory's report says.</summary>
internal static class ReportSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var report = plan.Report;
        var sheet = new SectionWriter("report", "What the report says");
        sheet.Say(SheetText.Origin(report));
        sheet.Figure(
            "plot.area",
            "area of the plot",
            new(
                $"{Amounts.Print(plan.Plot.Area, "ac", 3)} ({Amounts.Print(plan.Plot.Area, "ft2", 0)})",
                SheetAmount.Acres(plan.Plot.Area)
            ),
            plan.Plot.Measured
        );
        sheet.Say(SheetText.Acidity(report));
        var system = plan.NutrientSystem;
        sheet.Say($"Rated by {system.Name} ({system.Institution.FullName}, {system.Edition}).");
        var need = answers.Need.Told;
        sheet.RestsOn(need);
        foreach (var rating in need.Ratings)
        {
            string code = FigureCode.Of("rating", FigureCode.Word(rating.Reading.Analyte.ToString()));
            sheet.Figure(code, rating.Reading.ToString(), rating.Verdict, rating.Line);
        }

        foreach (var row in need.RowsRead)
        {
            string kinds = string.Join("; ", row.Kinds.Select(SheetText.Name));
            sheet.Say(
                row.Row is not { } taken ? $"Without a row in this system: {kinds}."
                : row.IsForFoodPlots ? $"Read from the wildlife plot row ({CropRows.WordsFor(taken)}): {kinds}."
                : row.IsTheirOwn ? $"Read from the row for {CropRows.WordsFor(taken)}: {kinds}."
                : $"Taken as {CropRows.WordsFor(taken)}, the nearest row: {kinds}."
            );
        }

        return sheet.Close();
    }
}
