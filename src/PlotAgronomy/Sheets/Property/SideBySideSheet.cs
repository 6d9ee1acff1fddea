using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Sheets;

/// <summary>Two plans side by side: cost, seasons, kinds.</summary>
internal static class SideBySideSheet
{
    internal static FieldSheet Write(PlansSideBySide plans)
    {
        var (first, second) = (plans.First, plans.Second);
        var sheet = new SectionWriter("plans", "The two plans");
        sheet.Table(
            ["", "first", "second"],
            [
                Row("plot", Named(first), Named(second)),
                Row("cost", Cost(first), Cost(second)),
                Row("sown now", Sown(first), Sown(second)),
                Row("held back", Held(first), Held(second)),
                .. plans.Seasons.Select(s =>
                    Row($"feeds in {SeasonalUse.SeasonWords[s.Season]}", Share(s.First), Share(s.Second))
                ),
                Row("open questions", Amounts.Print(first.Questions.Length, 0), Amounts.Print(second.Questions.Length, 0)),
            ]
        );
        sheet.Say("What feeds in a season is told in parts of a full stand.");
        sheet.Say(
            plans.DearerBy == 0
                ? "Both cost the same."
                : $"The {Which(plans)} plan costs {first.Plan.Currency.Print(Math.Abs(plans.DearerBy))} less."
        );
        return new()
        {
            Title = $"{first.Plan.Plot.Name} beside {second.Plan.Plot.Name}",
            Sections = [sheet.Close()],
            Findings = [],
            Sources = [],
        };
    }

    private static SheetRow Row(string what, string first, string second) => new() { Cells = [what, first, second] };

    private static string Named(PlotAnswers answers) => answers.Plan.ToString();

    private static string Cost(PlotAnswers answers) => answers.Plan.Currency.Print(answers.TotalCost);

    private static string Which(PlansSideBySide plans) => plans.DearerBy > 0 ? "first" : "second";

    private static string Sown(PlotAnswers answers) =>
        answers.Verdict.TryGet(out var verdict) ? Names(verdict.Sown.Select(k => k.Planned.Kind)) : "not known";

    private static string Held(PlotAnswers answers) =>
        answers.Verdict.TryGet(out var verdict) ? Names(verdict.Held.Select(k => k.Planned.Kind)) : "not known";

    private static string Names(IEnumerable<CropKind> kinds) =>
        string.Join(", ", kinds.Select(SheetText.Name)) is { Length: > 0 } names ? names : "none";

    private static string Share(double? share) => share is { } known ? Amounts.Print(known, 2) : "not known";
}
