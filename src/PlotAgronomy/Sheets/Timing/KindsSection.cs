using PlotAgronomy.Calendar;

namespace PlotAgronomy.Sheets;

/// <summary>The kinds on one day: verdict, emergence, and the reasons.</summary>
internal static class KindsSection
{
    internal static SheetSection Write(string id, DecisionDay day)
    {
        var sheet = new SectionWriter(id, $"If sown on {SheetText.Date(day.Date)}");
        sheet.Table(
            ["kind", "verdict", "up on", "moist days on end", "moist days until up", "last sensible day", "first forage"],
            day.Kinds.Select(k => new SheetRow
            {
                Cells =
                [
                    SheetText.Name(k.Kind),
                    TimingWords.Verdict(k.Verdict),
                    TimingWords.DateOr(k.Day.Emergence.EmergesOn, "after the forecast"),
                    TimingWords.Range(k.FewestMoistDays, k.MostMoistDays),
                    Amounts.Print(k.Day.Emergence.MoistDays, 0),
                    TimingWords.DateOr(k.Dates.LastSensible, "not known"),
                    Forage(k.Dates),
                ],
            })
        );
        sheet.Remark(TimingWords.Remarks(day.Reasons));
        return sheet.Close();
    }

    private static string Forage(KindDates dates) =>
        dates is { ForageFrom: { } from, ForageBy: { } by } ? $"{SheetText.Date(from)} to {SheetText.Date(by)}" : "not printed";
}
