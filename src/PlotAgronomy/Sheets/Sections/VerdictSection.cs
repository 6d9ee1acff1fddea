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
        var sheet = new SectionWriter("verdict", "May it be sown?", SheetPart.Front);
        var deciding = answers.Field.Deciding;
        if (answers.Verdict.State == AnswerState.Open && deciding.IsEmpty)
        {
            sheet.Say("Nobody can say before the soil's pH is known, see the questions. What follows leaves it out.");
        }

        sheet.Say(
            Whole(
                verdict,
                plan,
                deciding.IsEmpty ? "Yes" : $"Not sure yet: first answer {string.Join(", ", deciding)}. If that fits, yes"
            )
        );
        sheet.Remark(verdict.Spoken.Select(v => (SheetText.Name(v.Planned.Kind), One(v))));
        if (Expected(verdict).ToList() is { Count: > 0 } expected)
        {
            sheet.Say(string.Join(' ', expected));
        }

        if (Empty(verdict).Concat(NotChecked(verdict, plan)).ToList() is { Count: > 0 } empty)
        {
            sheet.Say(string.Join(' ', empty));
        }

        sheet.Remark(verdict.Together.Select(f => ("but", SheetText.Sentence(f))));
        return sheet.Close();
    }

    /// <summary>What would stand in the place of what does not, each with its own figures.</summary>
    internal static SheetSection? WriteSubstitutes(PlotAnswers answers)
    {
        var sheet = new SectionWriter("substitutes", "What would stand in their place", SheetPart.Work);
        if (answers.Verdict.State != AnswerState.NoneNeeded)
        {
            sheet.Remark(
                answers
                    .Verdict.Told.Substitutes.GroupBy(Why)
                    .Select(alike => (string.Join(", ", alike.Select(s => SheetText.Name(s.Kind))), SheetText.Capital(alike.Key)))
            );
        }

        return sheet.CloseOrNone();
    }

    internal static string PlannedFor(PlotPlan plan) =>
        plan.PlantingDate is { } day ? $", planned for {SheetText.Date(day)}" : "";

    private static string Whole(PlotVerdict verdict, PlotPlan plan, string yes) =>
        verdict.Decision switch
        {
            PlotDecision.Sow => $"{yes}. Sow {Names(verdict.Sown)}{PlannedFor(plan)}.",
            PlotDecision.SowWithout => $"{yes}, without {Names(verdict.Held)}. Sow {Names(verdict.Sown)}{PlannedFor(plan)}.",
            PlotDecision.LimeAndWait => "Not yet. Lime, wait and test; nothing of this blend is sown before.",
            PlotDecision.NothingThisSeason => "No. Nothing of this blend is sown now.",
            _ =>
                $"No seed is needed. {SheetText.Name(verdict.Upkeep!.Kind)} stands there{Thickness(verdict.Upkeep)}: keep it up, "
                    + "see below.",
        };

    private static string Thickness(StandUpkeep stand)
    {
        string thin = stand.IsThin ? ", which is thin" : "";
        return stand.Share is { } share ? $" at {Amounts.Print(share, 2)} of a full stand{thin}" : "";
    }

    private static string One(KindVerdict kind)
    {
        string because = string.Concat((kind.IsSown ? kind.Cautions : kind.Reasons).Select(f => $" {SheetText.Bare(f)}"));
        return kind.Decision switch
        {
            KindDecision.Sow => because.TrimStart(),
            KindDecision.OtherSeed => $"Not this lot.{because} Untreated seed of it may be sown.",
            KindDecision.AfterTest => $"Not yet.{because}",
            KindDecision.NotThisSeason => kind.NextDay is { } next
                ? $"Not now.{because} The next published day is {SheetText.Date(next)}."
                : $"Not now.{because}",
            _ => $"Not here.{because}",
        };
    }

    /// <summary>The forecast and the hold-back in one sentence: which of the two a person goes by.</summary>
    private static IEnumerable<string> Expected(PlotVerdict verdict)
    {
        if (verdict is { WithinReach.IsEmpty: true, OutOfReach.IsEmpty: true })
        {
            yield break;
        }

        if (verdict.Expected is not { } outlook)
        {
            yield return "No lime is known to be at work by then: what waits for a test waits for a later season.";
            yield break;
        }

        string when = verdict.TestOn is { } day ? $": a test about {SheetText.Date(day)} decides" : "";
        yield return $"The lime may bring pH {SheetText.FromTo(outlook.ExpectedPhLow, outlook.ExpectedPhHigh, 1)} by "
            + $"{SheetText.Date(outlook.Request.PlantingOn)}. That is a forecast and sows nothing{when}.";
        if (!verdict.WithinReach.IsEmpty)
        {
            yield return $"Within reach of that test: {Needs(verdict.WithinReach)}.";
        }

        if (!verdict.OutOfReach.IsEmpty)
        {
            yield return $"Out of reach by then: {Needs(verdict.OutOfReach)}. The lime has about its full effect by "
                + $"{SheetText.Date(outlook.FullEffectOn)}; test then.";
        }
    }

    private static IEnumerable<string> Empty(PlotVerdict verdict)
    {
        if (verdict.Decision == PlotDecision.SowWithout)
        {
            yield return $"So {Amounts.Print(verdict.PercentMissing, 0)} % of a full stand is not sown; the rates of the "
                + "others are not raised for it.";
        }

        if (!verdict.Substitutes.IsEmpty)
        {
            string kinds = string.Join(", ", verdict.Substitutes.Select(Named));
            yield return $"In their place would stand {kinds}.";
        }
    }

    private static string Named(SubstituteKind kind) =>
        kind.IsAtItsEdge ? $"{SheetText.Name(kind.Kind)} (at the edge of what it stands)" : SheetText.Name(kind.Kind);

    private static IEnumerable<string> NotChecked(PlotVerdict verdict, PlotPlan plan)
    {
        if (verdict.Kinds.IsEmpty)
        {
            yield break;
        }

        string[] missing =
        [
            .. plan.Plot.PlantingRegion is null ? ["planting dates (the region is not known)"] : Array.Empty<string>(),
            .. plan.Plot.Drainage is null ? ["wet or dry ground (nobody says how the plot drains)"] : Array.Empty<string>(),
        ];
        if (missing.Length > 0)
        {
            yield return $"Not looked at: {string.Join(", ", missing)}.";
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
