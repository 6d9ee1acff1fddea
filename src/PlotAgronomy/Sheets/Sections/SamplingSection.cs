namespace PlotAgronomy.Sheets;

/// <summary>How to take the sample that is missing.</summary>
internal static class SamplingSection
{
    /// <summary>None with a report that prints readings.</summary>
    internal static SheetSection? Write(PlotAnswers answers)
    {
        if (!answers.Soil.Told.Card.TryGet(out var card))
        {
            return null;
        }

        var sheet = new SectionWriter("sampling", "Sampling card", SheetPart.Back);
        sheet.Remark(card.Lines);
        return sheet.Close();
    }
}
