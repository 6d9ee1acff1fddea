using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Spreading;
using UnitsNet;

namespace PlotAgronomy.Sheets;

/// <summary>One row a walk with the spreader: what, how many fillings, which gate, what pace, what a test run must use.</summary>
internal static class SpreadSection
{
    internal static SheetSection? Write(PlotAnswers answers, FieldPlan field)
    {
        var sheet = new SectionWriter("spread", "Spread", SheetPart.Front);
        var walks = field.Walks;
        if (answers.Plan.Spreader is not { } spreader)
        {
            SayNone(sheet, answers);
            return sheet.CloseOrNone();
        }

        Drill(sheet, answers);
        if (!walks.IsEmpty)
        {
            string name = SheetText.Capital(spreader.Name);
            var laid = walks.FirstOrDefault(w => w.Drawing is not null);
            if (laid is null)
            {
                string lines = Amounts.Print(walks[0].Pass.Spacing, "ft", 1);
                sheet.Say(string.Join(' ', [$"{name}, {lines} between the lines.", .. Measured(walks)]));
            }

            sheet.Table(
                [
                    "what",
                    "on the scale",
                    "fills",
                    "gate, pace",
                    Course(walks) is { } one ? $"{one} use" : "a test run uses",
                    "half way",
                ],
                walks.Select(walk => Row(sheet, walk, Course(walks) is not null))
            );
            if (laid is { Drawing: { } drawing })
            {
                sheet.Draw(drawing, $"{name}: {Passes(laid.Seed!.Laid.OrNull()!)}.");
            }

            string said = string.Join(' ', [.. laid is null ? [] : Measured(walks), .. Sentences(walks)]);
            if (said.Length > 0)
            {
                sheet.Say(said);
            }
        }

        sheet.Remark(field.Spreader.Select(f => (Finding.SeverityWords[f.Severity], SheetText.Sentence(f))));
        return sheet.CloseOrNone();
    }

    private const string TestRun =
        "Test run on the first pass: weigh, walk, weigh again. Too much: faster, or close the gate; too little: slower, or "
        + "open it.";

    private static IEnumerable<string> Sentences(ImmutableArray<PlannedWalk> walks)
    {
        if (walks.FirstOrDefault(w => w.Pass.IsCrosswise) is { } twice)
        {
            yield return "Each way: walk the plot twice, the second time across the first, each time at half the rate, "
                + $"about {SheetText.Distance(Once(twice.Seed!))}.";
        }

        if (walks.Any(w => !w.Pass.IsTooMany))
        {
            yield return TestRun;
        }

        if (HalfWayWords.Rule(walks) is { Length: > 0 } rule)
        {
            yield return rule;
        }
    }

    private static Length Once(SowingPass pass) => pass.Laid.OrNull()?.Path ?? pass.Walk.Distance;

    private static void SayNone(SectionWriter sheet, PlotAnswers answers)
    {
        if (answers.Spreading.State == AnswerState.Open)
        {
            sheet.Say("The plan names no spreader: there are no passes before its width is known and a run was weighed.");
        }
    }

    private static void Drill(SectionWriter sheet, PlotAnswers answers)
    {
        if (answers.Plan.Method == PlantingMethod.Drilled && answers.Spreading.TryGet(out var spreading))
        {
            sheet.Say("The drill: set it by its own chart, turn its wheel over the test run, and weigh what its rows let out.");
            sheet.Table(["drill", "on the scale", "a test run uses"], spreading.Passes.Select(p => Drilled(sheet, p)));
        }
    }

    private static string Passes(FieldPasses layout) =>
        $"{Amounts.Print(layout.Passes.Length, 0)} passes of up to {Amounts.Print(layout.LongestFeet, 0)} ft, "
        + $"{Amounts.Print(layout.Spacing, "ft", 1)} apart, {Amounts.Print(layout.Turns, 0)} turns, "
        + $"{SheetText.Distance(layout.Path)} in all";

    private static SheetRow Row(SectionWriter sheet, PlannedWalk walk, bool isHeaded)
    {
        var pass = walk.Pass;
        string each = pass.IsCrosswise ? " each way" : "";
        string test = $"{SheetText.Weight(pass.TestRunCatch)} in {SheetText.Distance(pass.TestRun)}{each}";
        return sheet.Row(
            FigureCode.Of("walk", CodeOf(walk)),
            "a test run uses",
            new(test, SheetAmount.Weight(pass.TestRunCatch)),
            [
                walk.What,
                SheetText.Load(pass),
                Hopper(pass),
                Gate(walk),
                pass.IsTooMany ? "-"
                : isHeaded ? $"{SheetText.ByHopper(pass.TestRunCatch)}{each}"
                : test,
                walk.HalfWay is { } half ? HalfWayWords.Left(half) : "-",
            ],
            [],
            [pass, .. Besides(walk)]
        );
    }

    private static IEnumerable<IWorkedResult> Besides(PlannedWalk walk) =>
        new IWorkedResult?[] { walk.Seed?.Setting.OrNull(), walk.HalfWay }.OfType<IWorkedResult>();

    /// <summary>The test run, where it is one length for all walks.</summary>
    private static string? Course(ImmutableArray<PlannedWalk> walks) =>
        walks.Where(w => !w.Pass.IsTooMany).Select(w => SheetText.Distance(w.Pass.TestRun)).Distinct().ToList() is [var one]
            ? one
            : null;

    private static string CodeOf(PlannedWalk walk) =>
        walk.Seed is { } seed ? $"pass-{Amounts.Print(seed.Number, 0)}" : FigureCode.Word(walk.What);

    private static string Hopper(WalkedPass pass) =>
        pass is not { Fillings: { } count, PerFilling: { } one } ? "-"
        : count == 1 ? "1 fill"
        : $"{Amounts.Print(count, 0)} of {SheetText.Weight(one)}";

    private static string Gate(PlannedWalk walk) =>
        walk.Pass.IsTooMany ? "no"
        : walk.Seed?.Run is { } run ? $"{Amounts.Print(run.Gate, 2)}{Pace(walk.Pass)}"
        : "test run";

    private static string Pace(WalkedPass pass) => pass.TimePer100Feet is { } time ? $", {Amounts.Print(time, "s", 0)}" : "";

    /// <summary>Which seed a gate was measured with, where it is not all that goes through.</summary>
    private static IEnumerable<string> Measured(ImmutableArray<PlannedWalk> walks) =>
        walks
            .Select(w => w.Seed)
            .OfType<SowingPass>()
            .Where(s => s.Run is not null && s.Kinds.Length > 1)
            .Select(s => $"Gate {Amounts.Print(s.Run!.Gate, 2)} is from {SheetText.Name(s.Run.Kind)} alone.");

    private static SheetRow Drilled(SectionWriter sheet, SowingPass pass)
    {
        string test = $"{SheetText.Weight(pass.TestRunCatch)} in {SheetText.Distance(SowingPass.TestRun)}";
        return sheet.Row(
            FigureCode.Of("walk", $"pass-{Amounts.Print(pass.Number, 0)}"),
            "a test run uses",
            new(test, SheetAmount.Weight(pass.TestRunCatch)),
            [pass.Names, SheetText.Weight(pass.Load), test],
            [pass.LoadLine, pass.TestRunLine]
        );
    }
}
