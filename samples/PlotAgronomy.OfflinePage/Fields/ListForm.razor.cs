using Microsoft.AspNetCore.Components;
using PlotAgronomy.OfflinePage.Plan;

namespace PlotAgronomy.OfflinePage.Fields;

/// <summary>A list of the plan. One item more may stand here that the plan does not hold yet: it is written when its first field
/// is typed.</summary>
public sealed partial class ListForm
{
    private bool hasNew;
    private int takenOut;
    private int lastWritten;
    private bool goesToNew;

    [Parameter, EditorRequired]
    public required FieldDeclaration Field { get; set; }

    [Parameter, EditorRequired]
    public required PlanPath Path { get; set; }

    private int Written => Desk.Text.Find(Path)?.Items.Count ?? 0;

    private int Count => hasNew ? Written + 1 : Written;

    protected override void OnParametersSet()
    {
        hasNew = hasNew && Written == lastWritten;
        lastWritten = Written;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (goesToNew)
        {
            goesToNew = false;
            await Browser.GoToAsync(Path.Item(Written).ToString());
        }
    }

    private string Title(int index)
    {
        string one = FieldLabels.OneOf(Field.Name);
        return $"{char.ToUpperInvariant(one[0])}{one[1..]} {Amounts.Print(index + 1, 0)}";
    }

    private void Add() => (hasNew, goesToNew) = (true, true);

    private async Task TakeOutAsync(int index)
    {
        bool isWritten = index < Written;
        hasNew = hasNew && isWritten;
        takenOut++;
        if (isWritten)
        {
            await Desk.TypeAsync(Path.Item(index), null);
        }

        await Browser.GoToAsync($"{Path}-add");
    }
}
