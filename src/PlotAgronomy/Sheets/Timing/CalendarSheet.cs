using System.Collections.Immutable;
using PlotAgronomy.Calendar;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sheets;

/// <summary>The season as a dated list, and the dates of the kinds.</summary>
internal static class CalendarSheet
{
    internal static FieldSheet Write(PlotAnswers answers)
    {
        var season = answers.Calendar;
        var work = answers.SeasonWork;
        ImmutableArray<SheetSection> sections =
        [
            .. season.Questions.IsEmpty ? Enumerable.Empty<SheetSection>() : [TimingWords.Questions(season.Questions)],
            Tasks(work),
            .. answers.Dates.OrNull() is { } dates ? [Kinds(dates)] : Enumerable.Empty<SheetSection>(),
        ];
        return SheetEnding.Close(
            $"{answers.Plan.Plot.Name}: season{Around(answers.Plan)}",
            sections,
            season.Findings,
            more: work.SelectMany(w => w.Task.Origin.Sources)
        );
    }

    private static string Around(PlotPlan plan) =>
        plan.PlantingDate is { } day ? $" around {SheetText.Date(day)}" : ", its day not set";

    private static SheetSection Tasks(ImmutableArray<SeasonWork> work)
    {
        var sheet = new SectionWriter("season", "The season, by the day each task is due");
        sheet.Table(
            ["no.", "when", "task", "why", "after", "source"],
            work.Select(w => new SheetRow
            {
                Cells =
                [
                    Amounts.Print(w.Number, 0),
                    w.Task.When.Length == 0 ? "-" : w.Task.When,
                    TimingWords.WithAmounts(w),
                    w.Task.Reason,
                    string.Join(", ", w.WaitsFor.Select(n => Amounts.Print(n, 0))),
                    $"{w.Task.Origin}, {SheetText.Standing(w.Task.Origin.Status)}",
                ],
            })
        );
        sheet.Say("The forecast goes before a date: sow just ahead of a real rain inside the window.");
        return sheet.Close();
    }

    private static SheetSection Kinds(SowingDates dates)
    {
        var sheet = new SectionWriter("dates", "The kinds and their dates");
        sheet.Table(
            ["kind", "printed dates", "last sensible day", "first forage", "stops at frost"],
            dates.Kinds.Select(k => new SheetRow
            {
                Cells =
                [
                    SheetText.Name(k.Kind),
                    k.Windows.IsEmpty ? "none read" : string.Join("; ", k.Windows.Select(w => w.ToString()).Distinct()),
                    TimingWords.DateOr(k.LastSensible, "not known"),
                    k is { ForageFrom: { } from, ForageBy: { } by }
                        ? $"{SheetText.Date(from)} to {SheetText.Date(by)}"
                        : "not printed",
                    StopsAtFrost(k),
                ],
            })
        );
        if (dates.DropOut.Length > 1)
        {
            var order = dates.DropOut.Select(k => $"{SheetText.Name(k.Kind)} after {SheetText.Date(k.LastSensible!.Value)}");
            sheet.Say($"As the day slips these drop out: {string.Join(", ", order)}.");
        }

        return sheet.Close();
    }

    private static string StopsAtFrost(KindDates kind) =>
        !kind.StopsAtFrost ? "no: grows on"
        : kind.EarlyFrost is { } early ? $"yes, early on {SheetText.Date(early)}"
        : "yes";
}
