using PlotAgronomy.Reference;

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

        foreach (var severity in findings.Where(f => f.Code != ReferenceCodes.FromMemory).GroupBy(f => f.Severity))
        {
            sheet.Remark(severity.Select(InWords));
        }

        SayMemory(sheet, [.. findings.Where(f => f.Code == ReferenceCodes.FromMemory)]);
        return sheet.Close();
    }

    /// <summary>What cannot change what is done; printed with the working.</summary>
    internal static SheetSection WriteBackground(IReadOnlyList<Finding> findings)
    {
        var sheet = new SectionWriter("background", "Notes on the working");
        sheet.Remark(findings.Select(InWords));
        return sheet.Close(isWorking: true);
    }

    private static (string Word, string Text) InWords(Finding finding) =>
        (Finding.SeverityWords[finding.Severity], $"{finding.Text} [{finding.Code}]");

    /// <summary>What rests on memory is said once, at the foot.</summary>
    private static void SayMemory(SectionWriter sheet, IReadOnlyList<Finding> remembered)
    {
        if (remembered.Count > 0)
        {
            string what = string.Join("; ", remembered.Select(MethodAndSource).Distinct());
            sheet.Say(
                "From memory, not yet checked against the publication; compare with the printed table before relying on it: "
                    + $"{what}. [{ReferenceCodes.FromMemory}]"
            );
        }
    }

    private static string MethodAndSource(Finding finding)
    {
        string[] said = [.. finding.Values.Select(v => v.Text)];
        return $"{said[0]} ({said[1]})";
    }
}
