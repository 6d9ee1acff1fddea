using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>What the laboratory's report says.</summary>
internal static class ReportSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var plan = answers.Plan;
        var report = plan.ReportOrNone;
        bool isRead = report.PrintsReadings;
        var sheet = new SectionWriter("report", isRead ? "What the report says" : "What is known of the plot", SheetPart.Back);
        sheet.Say(
            isRead ? $"{SheetText.Origin(report)} {SheetText.Acidity(report)}"
            : plan.Printed is not null ? "The readings of the report are not in the plan; what it recommends is used."
            : "There is no soil report."
        );
        sheet.Figure(
            "plot.area",
            "area of the plot",
            new(
                $"{Amounts.Print(plan.Plot.Area, "ac", 3)} ({Amounts.Print(plan.Plot.Area, "ft2", 0)})",
                SheetAmount.Acres(plan.Plot.Area)
            ),
            plan.Plot.Measured
        );
        if (plan.HomePh is { } own)
        {
            sheet.Say(
                report.WaterPh is null
                    ? $"Read by yourself: {own}."
                    : $"Read by yourself: {own}; the laboratory's pH goes before it."
            );
        }

        var choice = answers.NutrientSystem;
        if (choice.Chosen is { } system)
        {
            string why = choice.By == ChosenBy.Plan ? "" : $", {choice.Reason}";
            sheet.Remark([("rated", $"By {system.Name} ({system.Institution.FullName}, {system.Edition}){why}.")]);
        }
        var need = answers.Need.Told;
        sheet.RestsOn(need);
        foreach (var rating in need.Ratings)
        {
            string code = FigureCode.Of("rating", FigureCode.Word(rating.Reading.Analyte.ToString()));
            sheet.Figure(code, rating.Reading.ToString(), rating.Verdict, rating.Line);
        }

        if (choice.Chosen is not null)
        {
            sheet.Remark(need.RowsRead.Select(row => ("row", Read(row))));
        }

        return sheet.Close();
    }

    private static string Read(RowRead row)
    {
        string kinds = string.Join("; ", row.Kinds.Select(SheetText.Name));
        return row.Row is not { } taken ? $"Without a row in this system: {kinds}."
            : row.IsForFoodPlots ? $"Read from the wildlife plot row ({CropRows.WordsFor(taken)}): {kinds}."
            : row.IsTheirOwn ? $"Read from the row for {CropRows.WordsFor(taken)}: {kinds}."
            : $"Taken as {CropRows.WordsFor(taken)}, the nearest row: {kinds}.";
    }
}
