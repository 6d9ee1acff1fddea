using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>The work of the season, a step each.</summary>
internal static class WorkOrderSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var sheet = new SectionWriter("order-of-work", "Order of work");
        sheet.Step(answers.SeasonWork.Select(Step));
        return sheet.Close();
    }

    private static string Step(SeasonWork work) =>
        work.Task.When.Length == 0 ? TimingWords.WithAmounts(work) : $"{work.Task.When}: {TimingWords.WithAmounts(work)}";
}
