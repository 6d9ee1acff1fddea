using Microsoft.AspNetCore.Components;
using PlotAgronomy.OfflinePage.Plan;
using PlotAgronomy.PlanFiles;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.OfflinePage.Answers;

/// <summary>What comes of the plan, above its sheet.</summary>
public sealed partial class AnswersView
{
    private static readonly string[] Front = ["verdict", "ask", "buy", "do", "spread", "after", "watch", "write-down"];

    /// <summary>Gets or sets which edition of the plan is shown.</summary>
    [Parameter, EditorRequired]
    public int Edition { get; set; }

    [Parameter]
    public EventCallback<PlanProblem> OnProblem { get; set; }

    [Parameter]
    public EventCallback<PlanPath> OnField { get; set; }

    [Parameter]
    public EventCallback<string> OnSection { get; set; }

    /// <summary>Those with most at stake first, as the sheet asks them; then those on which nothing hangs.</summary>
    private IReadOnlyList<OpenQuestion> Questions { get; set; } = [];

    private IReadOnlyList<PlanProblem> Said => [.. Desk.Taken, .. Desk.Doubted];

    protected override void OnParametersSet() =>
        Questions = Desk.Answers is { } answers
            ? [.. answers.Field.Asked.Concat(answers.Field.AskedLater).Select(q => q.Question)]
            : [];

    /// <summary>The field that answers a question; the list, where one of its items does.</summary>
    private static PlanPath? FieldFor(OpenQuestion question) =>
        PlanFile.FieldFor(question) is { } path ? PlanPath.Of(path.Split("[*]")[0]) : null;
}
