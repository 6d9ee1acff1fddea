namespace PlotAgronomy.Sheets;

/// <summary>What is still to be asked, and whom: the answers below rest on it or wait for it.</summary>
internal static class QuestionsSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var sheet = new SectionWriter("ask", "Ask before you buy");
        sheet.Remark(answers.Questions.Select(q => (q.WhomInWords, $"{q.Text}{Plausible(q)} [{q.Code}]")));
        return sheet.Close();
    }

    private static string Plausible(OpenQuestion question) =>
        question.PlausibleTexts is { IsEmpty: false } texts ? $" Perhaps {string.Join("; ", texts)}." : "";
}
