namespace PlotAgronomy.Sheets;

/// <summary>What should worry the reader, most serious first.</summary>
internal static class FindingsSection
{
    internal static SheetSection Write(IReadOnlyList<Finding> findings, bool othersWereTold)
    {
        var sheet = new SectionWriter("findings", "Findings, most serious first");
        if (findings.Count == 0)
        {
            sheet.Say(othersWereTold ? "None beyond those above." : "None.");
        }

        foreach (var severity in findings.GroupBy(f => f.Severity))
        {
            sheet.Remark(severity.Select(f => (Finding.SeverityWords[f.Severity], $"{f.Text} [{f.Code}]")));
        }

        return sheet.Close();
    }
}
