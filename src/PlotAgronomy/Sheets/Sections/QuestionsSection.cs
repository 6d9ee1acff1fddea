using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Sheets;

/// <summary>What is still to be asked, and whom, most at stake first; then the number that is worth measuring again.</summary>
internal static class QuestionsSection
{
    internal static SheetSection? Write(FieldPlan field)
    {
        var sheet = new SectionWriter("ask", "Ask before you buy", SheetPart.Front);
        IEnumerable<(string, string)> weakest = field.Weakest is { } again
            ? [("measure", $"Worth measuring again: {again}.")]
            : [];
        sheet.Remark([.. field.Asked.Select(q => (q.Question.WhomInWords, $"{q.Question.Text}{Stake(q)}")), .. weakest]);
        return sheet.CloseOrNone();
    }

    /// <summary>Those with less at stake.</summary>
    internal static SheetSection? WriteLater(FieldPlan field)
    {
        var sheet = new SectionWriter("ask-later", "Ask as well", SheetPart.Back);
        sheet.Remark(field.AskedLater.Select(q => (q.Question.WhomInWords, $"{q.Question.Text}{Stake(q)} [{q.Question.Code}]")));
        return sheet.CloseOrNone();
    }

    /// <summary>The plausible answers in full.</summary>
    internal static SheetSection? WritePlausible(FieldPlan field)
    {
        var sheet = new SectionWriter("plausible", "What may be answered", SheetPart.Work);
        sheet.Remark(
            field
                .Asked.Where(q => !q.Question.PlausibleTexts.IsEmpty)
                .Select(q => (q.Question.Code, $"{string.Join("; ", q.Question.PlausibleTexts)}."))
        );
        return sheet.CloseOrNone();
    }

    /// <summary>The plausible answers, and what rests on them.</summary>
    private static string Stake(QuestionStake stake) =>
        stake.AtStake.Length > 0 ? $"{Perhaps(stake)} The answer changes: {stake.AtStake}{Assumed(stake)}." : Perhaps(stake);

    /// <summary>What stands behind a colon in an answer explains it, and stands with the working. The ends of what is printed
    /// stand in the question.</summary>
    private static string Perhaps(QuestionStake stake) =>
        stake.Question.PlausibleTexts.IsEmpty || stake.Question is OpenQuestion<PrintedEnd>
            ? ""
            : $" Perhaps {string.Join("; ", stake.Question.PlausibleTexts.Select(p => p.Split(':')[0]))}.";

    private static string Assumed(QuestionStake stake) =>
        stake.Assumed.IsEmpty ? "" : $" (taking {string.Join("; ", stake.Assumed.Select(a => a.Answer))})";
}
