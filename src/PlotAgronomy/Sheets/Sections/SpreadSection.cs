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
            sheet.Say($"{SheetText.Capital(spreader.Name)}, {Amounts.Print(walks[0].Pass.Spacing, "ft", 1)} between the lines.");
            sheet.Table(
                ["what", "on the scale", "fills", "gate", "100 ft", Course(walks) is { } one ? $"{one} use" : "a test run uses"],
                walks.Select(walk => Row(sheet, walk, Course(walks) is not null))
            );
            if (walks.FirstOrDefault(w => w.Drawing is not null) is { Drawing: { } drawing } laid)
            {
                sheet.Draw(drawing, $"The passes over the plot: {Passes(laid.Seed!.Laid.OrNull()!)}.");
            }

            if (walks.FirstOrDefault(w => w.Pass.IsCrosswise) is { } twice)
            {
                sheet.Say(
                    "Each way: walk the plot twice, the second time across the first, each time at half the rate. Once over is "
                        + $"about {SheetText.Distance(Once(twice.Seed!))}; the second time is as much again."
                );
            }

            if (walks.Any(w => !w.Pass.IsTooMany))
            {
                sheet.Say($"{string.Concat(Measured(walks).Select(m => $"{m} "))}{TestRun}");
            }
        }

        sheet.Remark(field.Spreader.Select(f => (Finding.SeverityWords[f.Severity], SheetText.Sentence(f))));
        return sheet.CloseOrNone();
    }

    private const string TestRun =
        "First a test run, on the first pass: weigh the hopper, walk, weigh again. Too much: faster, or close the gate. Too "
        + "little: slower, or open it. Half way over the plot half must be gone: if not, change your pace, not the gate.";

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
        $"{Amounts.Print(layout.Passes.Length, 0)} of up to {Amounts.Print(layout.LongestFeet, 0)} ft, "
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
                pass.TimePer100Feet is { } time ? Amounts.Print(time, "s", 0) : "-",
                pass.IsTooMany ? "-"
                : isHeaded ? $"{SheetText.Weight(pass.TestRunCatch)}{each}"
                : test,
            ],
            [],
            [pass, .. walk.Seed?.Setting.OrNull() is { } setting ? [setting] : ImmutableArray<IWorkedResult>.Empty]
        );
    }

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
        : walk.Seed?.Run is { } run ? Amounts.Print(run.Gate, 2)
        : "test run";

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
