using PlotAgronomy.Planning;
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

    /// <summary>What changes nothing in the work: cautions, and what is unchecked.</summary>
    internal static SheetSection? WriteBehind(PlotAnswers answers, FieldPlan field)
    {
        var back = new SectionWriter("findings", "Also noted", SheetPart.Back);
        back.Remark(field.Behind.Where(f => f.Severity != FindingSeverity.Note).Select(InWords));
        string[] remembered =
        [
            .. answers.Findings.Where(f => f.Code == ReferenceCodes.FromMemory).Select(f => f.Values[0].Text).Distinct(),
        ];
        if (remembered.Length > 0)
        {
            back.Remark([
                ("memory", $"Not yet checked in print: {string.Join("; ", remembered)}. [{ReferenceCodes.FromMemory}]"),
            ]);
        }

        return back.CloseOrNone();
    }

    /// <summary>Notes without a place in the work.</summary>
    internal static SheetSection? WriteNotes(FieldPlan field)
    {
        var sheet = new SectionWriter("notes", "Notes", SheetPart.Work);
        sheet.Remark(field.Behind.Where(f => f.Severity == FindingSeverity.Note).Select(InWords));
        return sheet.CloseOrNone();
    }

    /// <summary>What cannot change what is done; printed with the working.</summary>
    internal static SheetSection WriteBackground(IReadOnlyList<Finding> findings)
    {
        var sheet = new SectionWriter("background", "Notes on the working", SheetPart.Work);
        sheet.Remark(findings.Select(InWords));
        return sheet.Close();
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
