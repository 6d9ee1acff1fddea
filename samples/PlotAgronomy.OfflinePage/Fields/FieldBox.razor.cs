using Microsoft.AspNetCore.Components;
using PlotAgronomy.OfflinePage.Plan;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>One field of the plan.</summary>
public sealed partial class FieldBox
{
    private const string AnyDay = "2026-09-12";

    [Parameter, EditorRequired]
    public required FieldDeclaration Field { get; set; }

    [Parameter, EditorRequired]
    public required PlanPath Path { get; set; }

    /// <summary>Gets or sets the label where it is not the name of the field.</summary>
    [Parameter]
    public string? Named { get; set; }

    private string Id => Path.ToString();

    private string Label => Named ?? FieldLabels.Of(Field.Name);

    private string Hint => Field.Hint.Trim();

    private string Typed => TypedValue.Of(Desk.Text.Find(Path));

    private string? Problem => Desk.ProblemsAt(Path).FirstOrDefault()?.Text;

    private string IsWrong => Problem is null ? "false" : "true";

    private string Told => Problem is null ? $"{Id}-hint" : $"{Id}-wrong {Id}-hint";

    private bool IsDate => Field.Examples.Contains(AnyDay);

    private string Keys => Field.Sort == FieldSort.Number ? "decimal" : "text";

    private string? Names => Field.Name is "kind" or "smotherKind" or "grewBefore" or "hopperOf" ? "kinds" : null;

    /// <summary>The words to choose from, and what stands there though it is none of them.</summary>
    private IEnumerable<string> Choices
    {
        get
        {
            IReadOnlyList<string> words = Field.Sort == FieldSort.Flag ? ["true", "false"] : Field.Choices;
            return Typed.Length == 0 || words.Contains(Typed) ? words : words.Append(Typed);
        }
    }

    private string Said(string choice) => (Field.Sort, choice) switch
    {
        (FieldSort.Flag, "true") => "yes",
        (FieldSort.Flag, "false") => "no",
        _ => choice,
    };

    private Task TypeAsync(ChangeEventArgs typed) =>
        Desk.TypeAsync(Path, TypedValue.ToJson(Field.Sort, typed.Value?.ToString() ?? ""));

    private async Task TodayAsync() => await Desk.TypeAsync(Path, NewPlanValue.Quoted(await Browser.TodayAsync()));
}
