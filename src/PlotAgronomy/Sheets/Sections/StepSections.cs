using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Spreading;

namespace PlotAgronomy.Sheets;

/// <summary>The dated steps up to sowing, and those after it, each with its weights and what is to be minded.</summary>
internal static class StepSections
{
    internal static SheetSection? Before(PlotAnswers answers, FieldPlan field) =>
        Write("do", "Do", answers, [.. field.Steps.Where(s => !s.IsAfterSowing)], []);

    internal static SheetSection? After(PlotAnswers answers, FieldPlan field) =>
        Write("after", "After", answers, [.. field.Steps.Where(s => s.IsAfterSowing)], field.Afterwards);

    private static SheetSection? Write(
        string id,
        string heading,
        PlotAnswers answers,
        ImmutableArray<FieldStep> steps,
        ImmutableArray<Finding> minded
    )
    {
        var sheet = new SectionWriter(id, heading, SheetPart.Front);
        sheet.Step(steps.Select(s => $"{Days(s.Work, answers.Plan.PlantingDate)}{Words(s)}"));
        sheet.Remark(minded.Select(f => (Finding.SeverityWords[f.Severity], SheetText.Sentence(f))));
        return sheet.CloseOrNone();
    }

    private static string Days(SeasonWork work, DateOnly? sowing) =>
        work.Task is { Earliest: { } from, Latest: { } to } ? $"{SheetText.Days(from, to, sowing)}: "
        : work.Task.When.Length > 0 ? $"{SheetText.Capital(work.Task.When)}: "
        : "";

    private static string Words(FieldStep step)
    {
        string with = Materials(step);
        string said = step.Work is { Task.Pass: not null, Materials.IsEmpty: false }
            ? $"{step.Work.Task.Title.Split(' ')[0]} {with}."
            : $"{step.Work.Task.Title}{Sentence(with)}";
        string wear = step.Work.Task.Wear is { } worn ? $" Wear {worn}." : "";
        string minded = string.Concat(step.Minded.Select(f => $" {SheetText.Sentence(f)}"));
        string asked = string.Concat(step.Asked.Select(q => $" Ask first: {q.Text}"));
        return $"{said}{wear}{minded}{asked}";
    }

    private static string Sentence(string words) => words.Length == 0 ? "" : $" {SheetText.Capital(words)}.";

    private static string Materials(FieldStep step)
    {
        var said = step.Work.Materials.Select(m => Weight(step, m)).ToList();
        if (step.Work.Depth is var (shallowest, deepest))
        {
            said.Add($"{SheetText.Inches(shallowest, deepest)} deep");
        }

        return string.Join(", ", said);
    }

    private static string Lasts(WalkedPass pass) =>
        pass is { WalkPerPackage: { } walk, InPackages: ( > 1, _) } ? $" (one bag per {SheetText.Distance(walk)} walked)" : "";

    /// <summary>In bags where it comes in bags.</summary>
    private static string Weight(FieldStep step, SeasonMaterial material) =>
        step.Walks.FirstOrDefault(w => w.Seed is null && w.What == material.Name) is { } walk
            ? $"{SheetText.Load(walk.Pass)} of {material.Name}{Lasts(walk.Pass)}"
            : $"{SheetText.Weight(material.Mass)} of {material.Name}";
}
