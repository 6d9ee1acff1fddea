using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Seeds;

namespace PlotAgronomy.Sheets;

/// <summary>May it be sown: the first thing on the sheet, in sentences with their reasons.</summary>
internal static class VerdictSection
{
    internal static SheetSection Write(PlotAnswers answers)
    {
        var verdict = answers.Verdict.Told;
        var plan = answers.Plan;
        var sheet = new SectionWriter("verdict", "May it be sown?");
        if (answers.Verdict.State == AnswerState.Open)
        {
            sheet.Say("Nobody can say before the soil's pH is known, see the questions. What follows leaves it out.");
        }

        sheet.Say(Whole(verdict, plan));
        sheet.Remark(verdict.Spoken.Select(v => (SheetText.Name(v.Planned.Kind), One(v))));
        Expected(sheet, verdict);
        if (verdict.Decision == PlotDecision.SowWithout)
        {
            sheet.Say(
                $"So {Amounts.Print(verdict.ShareMissing, 2)} of a full stand stays empty; the rates of the others are not "
                    + "raised for it."
            );
        }

        sheet.Remark(verdict.Together.Select(f => ("mind", f.Text)));
        if (!verdict.Substitutes.IsEmpty)
        {
            sheet.Say("What would stand here in their place, by its own figures:");
            sheet.Remark(
                verdict
                    .Substitutes.GroupBy(Why)
                    .Select(alike => (string.Join(", ", alike.Select(s => SheetText.Name(s.Kind))), alike.Key))
            );
        }

        NotChecked(sheet, verdict, plan);
        return sheet.Close();
    }

    internal static string PlannedFor(PlotPlan plan) =>
        plan.PlantingDate is { } day ? $", planned for {SheetText.Date(day)}" : "";

    private static string Whole(PlotVerdict verdict, PlotPlan plan) =>
        verdict.Decision switch
        {
            PlotDecision.Sow => $"Yes. Sow {Names(verdict.Sown)}{PlannedFor(plan)}.",
            PlotDecision.SowWithout => $"Yes, without {Names(verdict.Held)}. Sow {Names(verdict.Sown)}{PlannedFor(plan)}.",
            PlotDecision.LimeAndWait => "Not yet. Lime, wait and test; nothing of this blend is sown before.",
            PlotDecision.NothingThisSeason => "No. Nothing of this blend is sown now.",
            _ =>
                $"No seed is needed. {SheetText.Name(verdict.Upkeep!.Kind)} stands there{Thickness(verdict.Upkeep)}: keep it up, "
                    + "see the order of work.",
        };

    private static string Thickness(StandUpkeep stand)
    {
        string thin = stand.IsThin ? ", which is thin" : "";
        return stand.Share is { } share ? $" at {Amounts.Print(share, 2)} of a full stand{thin}" : "";
    }

    private static string One(KindVerdict kind)
    {
        string because = string.Concat((kind.IsSown ? kind.Cautions : kind.Reasons).Select(f => $" {f.Text}"));
        return kind.Decision switch
        {
            KindDecision.Sow => $"Sow it.{because}",
            KindDecision.OtherSeed => $"Not this lot.{because} Untreated seed of it may be sown.",
            KindDecision.AfterTest => $"Not yet.{because}",
            KindDecision.NotThisSeason => kind.NextDay is { } next
                ? $"Not now.{because} The next published day is {SheetText.Date(next)}."
                : $"Not now.{because}",
            _ => $"Not here.{because}",
        };
    }

    /// <summary>The forecast and the hold-back in one sentence: which of the two a person goes by.</summary>
    private static void Expected(SectionWriter sheet, PlotVerdict verdict)
    {
        if (verdict is { WithinReach.IsEmpty: true, OutOfReach.IsEmpty: true })
        {
            return;
        }

        if (verdict.Expected is not { } outlook)
        {
            sheet.Say("No lime is known to be at work by then: what waits for a test waits for a later season.");
            return;
        }

        string when = outlook.TestBeforeSowingOn is { } day ? $"a test about {SheetText.Date(day)}" : "a test";
        sheet.Say(
            $"The lime may bring pH {LimeSection.FromTo(outlook.ExpectedPhLow, outlook.ExpectedPhHigh, 1)} by "
                + $"{SheetText.Date(outlook.Request.PlantingOn)}. That is a forecast and sows nothing: {when} decides."
        );
        if (!verdict.WithinReach.IsEmpty)
        {
            sheet.Say($"Within reach of that test: {Needs(verdict.WithinReach)}.");
        }

        if (!verdict.OutOfReach.IsEmpty)
        {
            sheet.Say(
                $"Out of reach by then: {Needs(verdict.OutOfReach)}. The lime has about its full effect by "
                    + $"{SheetText.Date(outlook.FullEffectOn)}; test then."
            );
        }
    }

    private static void NotChecked(SectionWriter sheet, PlotVerdict verdict, PlotPlan plan)
    {
        if (verdict.Kinds.IsEmpty)
        {
            return;
        }

        if (plan.Plot.PlantingRegion is null)
        {
            sheet.Say("The day was not held against planting dates: the region is not known, see the questions.");
        }

        if (plan.Plot.Drainage is null)
        {
            sheet.Say("Wet or dry ground was not looked at: nobody says how the plot drains, see the questions.");
        }
    }

    private static string Why(SubstituteKind kind)
    {
        string ground = kind is { WettestDrainage: { } wettest, DriestDrainage: { } driest }
            ? $", {DrainageTolerance.Classes[wettest]} to {DrainageTolerance.Classes[driest]} ground"
            : "";
        string dates = kind.Windows.IsEmpty
            ? ""
            : $", sown {string.Join("; ", kind.Windows.Select(w => w.ToString()).Distinct())}";
        string first = kind.TestMustShow is null ? "" : $", so only when a test shows {Amounts.Print(kind.LowestPh, 1)}";
        string ph = Amounts.Print(kind.LowestPh, 1);
        string poison = string.Concat(kind.Poisons.Select(p => $"; poison ({p})"));
        return $"in place of {SheetText.Name(kind.InsteadOf)}: stands pH {ph} and more{ground}{dates}{first}{poison}.";
    }

    internal static string Needs(ImmutableArray<KindVerdict> waiting) =>
        string.Join(
            ", ",
            waiting.Select(v => $"{SheetText.Name(v.Planned.Kind)} (pH {Amounts.Print(v.TestMustShow!.Value, 1)} or more)")
        );

    private static string Names(ImmutableArray<KindVerdict> kinds) =>
        string.Join(", ", kinds.Select(v => SheetText.Name(v.Planned.Kind)));
}
