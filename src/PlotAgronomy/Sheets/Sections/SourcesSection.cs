namespace PlotAgronomy.Sheets;

/// <summary>The publications behind the sheet, and which library and tables it was made with.</summary>
internal static class SourcesSection
{
    internal static SheetSection Write(IReadOnlyList<Source> sources, SheetPart part = SheetPart.Body)
    {
        var sheet = new SectionWriter("sources", part == SheetPart.Work ? "Sources in full" : "Sources", part);
        sheet.Remark(sources.Select(s => (s.Id, $"{s.Citation}{Superseded(s)}")));
        if (part != SheetPart.Work)
        {
            sheet.Say(MadeWith);
        }

        return sheet.Close();
    }

    /// <summary>Whose publications they are; which of them is behind a figure tells its explanation.</summary>
    internal static SheetSection WriteShort(IReadOnlyList<Source> sources)
    {
        var sheet = new SectionWriter("publishers", "Sources", SheetPart.Back);
        int publishers = sources.Select(s => s.Publisher).Distinct().Count();
        sheet.Say(
            $"{Amounts.Print(sources.Count, 0)} sources of {Amounts.Print(publishers, 0)} publishers. The working lists all, "
                + "the explanation of a figure those behind it."
        );
        sheet.Say(MadeWith);
        return sheet.Close();
    }

    /// <summary>A sheet found in a drawer years later tells which numbers it was made from.</summary>
    private static string MadeWith => $"Made with PlotAgronomy {LibraryVersion.Text}, tables of {Source.DataVersion}.";

    private static string Superseded(Source source) =>
        source.SupersededBy is null ? "" : $" (superseded by {source.SupersededBy.Id})";
}
