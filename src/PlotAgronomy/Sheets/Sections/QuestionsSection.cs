using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>What is still to be asked, and whom, most at stake first; then the number that is worth measuring again.</summary>
internal static class QuestionsSection
{
    internal static SheetSection? Write(PlotAnswers answers)
    {
        var sheet = new SectionWriter("ask", "Ask before you buy");
        var asked = answers.Stakes.Questions.Where(q => !q.ChangesNothing).ToList();
        sheet.Remark(asked.Select(q => (q.Question.WhomInWords, $"{q.Question.Text}{Stake(q)} [{q.Question.Code}]")));
        var weakest = answers.Stakes.WorthMeasuringAgain;
        if (weakest is not null)
        {
            sheet.Say($"Worth measuring again: {weakest}.");
        }

        return asked.Count == 0 && weakest is null ? null : sheet.Close();
    }

    /// <summary>What rests on the answer; where that cannot be worked out, the plausible answers.</summary>
    private static string Stake(QuestionStake stake)
    {
        string plausible = string.Join("; ", stake.Question.PlausibleTexts);
        string perhaps = plausible.Length > 0 ? $" Perhaps {plausible}." : "";
        return stake.AtStake.Length > 0 ? $"{perhaps} At stake: {stake.AtStake}{Assumed(stake)}." : perhaps;
    }

    private static string Assumed(QuestionStake stake) =>
        stake.Assumed.IsEmpty ? "" : $" (taking {string.Join("; ", stake.Assumed.Select(a => a.Answer))})";
}
