using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>What to watch, most serious first.</summary>
internal static class WatchSection
{
    internal static SheetSection? Write(FieldPlan field)
    {
        var sheet = new SectionWriter("watch", "Watch", SheetPart.Front);
        sheet.Remark(field.Watched.Select(f => (Finding.SeverityWords[f.Severity], SheetText.Sentence(f))));
        return sheet.CloseOrNone();
    }
}
