namespace PlotAgronomy.Sheets;

/// <summary>The publications behind the sheet.</summary>
internal static class SourcesSection
{
    internal static SheetSection Write(IReadOnlyList<Source> sources)
    {
        var sheet = new SectionWriter("sources", "Sources");
        sheet.Remark(sources.Select(s => (s.Id, $"{s.Citation}{Superseded(s)}")));
        return sheet.Close();
    }

    private static string Superseded(Source source) =>
        source.SupersededBy is null ? "" : $" (superseded by {source.SupersededBy.Id})";
}
