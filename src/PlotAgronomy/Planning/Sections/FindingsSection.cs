namespace PlotAgronomy.Planning;

/// <summary>What should worry the reader, most serious first.</summary>
internal static class FindingsSection
{
    internal static SheetSection Write(IReadOnlyList<Finding> findings, bool othersWereTold)
    {
        var sheet = new SectionWriter("Findings, most serious first", 'N');
        if (findings.Count == 0)
        {
            sheet.Say(othersWereTold ? "None beyond those above." : "None.");
        }

        foreach (var severity in findings.GroupBy(f => f.Severity))
        {
            sheet.Remark(severity.Select(f => (Word(f.Severity), $"{f.Text} [{f.Code}]")));
        }

        return sheet.Close();
    }

    private static string Word(FindingSeverity severity) =>
        severity switch
        {
            FindingSeverity.Warning => "warning",
            FindingSeverity.Caution => "caution",
            _ => "note",
        };
}
