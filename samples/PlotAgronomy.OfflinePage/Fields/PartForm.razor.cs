using Microsoft.AspNetCore.Components;
using PlotAgronomy.OfflinePage.Plan;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>The fields of one part. Which are shown first is settled when the part appears: no field moves while it is typed
/// in.</summary>
public sealed partial class PartForm
{
    [Parameter, EditorRequired]
    public required PartDeclaration Part { get; set; }

    [Parameter, EditorRequired]
    public required PlanPath Path { get; set; }

    private IReadOnlyList<FieldDeclaration> First { get; set; } = [];

    private IReadOnlyList<FieldDeclaration> Others { get; set; } = [];

    protected override void OnInitialized()
    {
        First = [.. Part.Fields.Where(IsFirst)];
        Others = [.. Part.Fields.Except(First)];
    }

    private static string Named(IReadOnlyList<FieldDeclaration> fields) =>
        string.Join(", ", fields.Select(f => FieldLabels.InText(f.Name)).Take(3)) + Ellipsis(fields);

    private static string Ellipsis(IReadOnlyList<FieldDeclaration> fields) => fields.Count > 3 ? " ..." : "";

    private bool IsFirst(FieldDeclaration field) =>
        field.IsRequired || FirstFields.Has(Part.Name, field.Name) || Desk.Text.Find(Path.Member(field.Name)) is not null;

    private bool HasProblem(FieldDeclaration field) => Desk.Problems.Any(p => Path.Member(field.Name).Holds(p.Path));
}
