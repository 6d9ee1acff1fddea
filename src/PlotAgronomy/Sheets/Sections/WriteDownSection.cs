using PlotAgronomy.Planning;

namespace PlotAgronomy.Sheets;

/// <summary>Numbered blanks: what was really done and seen.</summary>
internal static class WriteDownSection
{
    internal static SheetSection? Write(FieldPlan field)
    {
        var sheet = new SectionWriter("write-down", "Write down", SheetPart.Front);
        sheet.Remark(
            field
                .Blanks.GroupBy(b => Heading(b.Topic))
                .Select(alike => (alike.Key, string.Join("   ", alike.Select(b => $"({Amounts.Print(b.Number, 0)}) {Words(b)}"))))
        );
        return sheet.CloseOrNone();
    }

    private static string When(RecordBlank blank) => blank.Subject ?? "after 3 to 4 weeks";

    private static string Heading(RecordTopic topic) =>
        topic switch
        {
            RecordTopic.Lime or RecordTopic.Fertilizer or RecordTopic.Dressing => "spread",
            RecordTopic.Seed => "sown",
            RecordTopic.Setting => "set",
            _ => "seen",
        };

    private static string Words(RecordBlank blank) =>
        blank.Topic switch
        {
            RecordTopic.Lime or RecordTopic.Fertilizer or RecordTopic.Seed =>
                $"{blank.Subject} ____ lb on __/__",
            RecordTopic.Dressing => $"{blank.Subject}, later ____ lb on __/__",
            RecordTopic.Setting => $"{blank.Subject}: gate ____, 100 ft in ____ s",
            RecordTopic.Rain => "first rain ____ in on __/__",
            RecordTopic.Stand => $"{When(blank)} ____ seedlings in a hoop of ____ ft2",
            _ => throw new InvalidOperationException($"No words for {blank.Topic}."),
        };
}
