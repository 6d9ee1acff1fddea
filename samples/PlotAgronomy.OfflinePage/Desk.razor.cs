using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using PlotAgronomy.OfflinePage.Answers;
using PlotAgronomy.OfflinePage.Fields;
using PlotAgronomy.OfflinePage.Plan;
using PlotAgronomy.PlanFiles;

namespace PlotAgronomy.OfflinePage;

/// <summary>What the buttons of the page do.</summary>
public sealed partial class Desk : IDisposable
{
    private const int LargestFile = 1_000_000;

    private bool isText;
    private bool isLost;
    private string? refused;
    private string? goTo;
    private int? goToLine;

    [Inject]
    private Browser Browser { get; set; } = null!;

    private string State => Plan.IsWorking ? "Working it out ..." : "";

    private string OtherView => isText ? "Show as fields" : "Show as text";

    public void Dispose() => Plan.Changed -= Show;

    protected override async Task OnInitializedAsync()
    {
        Plan.Changed += Show;
        if (!Plan.IsInHand && await Browser.KeptAsync() is { } kept)
        {
            await Plan.OpenAsync(kept);
        }
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        (string? field, int? line) = (goTo, goToLine);
        (goTo, goToLine) = (null, null);
        if (line is { } number)
        {
            await Browser.GoToLineAsync("plan-text", number);
        }
        else if (field is not null)
        {
            await Browser.GoToAsync(field);
        }
    }

    private void Show() => _ = InvokeAsync(ShowAsync);

    private async Task ShowAsync()
    {
        StateHasChanged();
        bool isKept = !Plan.IsInHand || await Browser.KeepAsync(Plan.Text.ToString());
        if (isKept == isLost)
        {
            isLost = !isKept;
            StateHasChanged();
        }
    }

    private Task OpenAsync(string text)
    {
        (refused, isText) = (null, false);
        return Plan.OpenAsync(text);
    }

    private async Task OpenFileAsync(InputFileChangeEventArgs chosen)
    {
        if (chosen.File.Size > LargestFile)
        {
            refused = $"{chosen.File.Name} is no plan file: it is larger than {Amounts.Print(LargestFile / 1000, 0)} kB.";
            return;
        }

        using var reader = new StreamReader(chosen.File.OpenReadStream(LargestFile));
        await OpenAsync(await reader.ReadToEndAsync());
        isText = Plan.Text.Root is null;
    }

    private async Task PutAwayAsync()
    {
        Plan.PutAway();
        await Browser.KeepAsync(null);
    }

    /// <summary>The file is the text as it stands: units, comments and order as they were typed.</summary>
    private Task SaveAsync() => Browser.SaveAsync(FileName, Plan.Text.ToString());

    private string FileName
    {
        get
        {
            string name = TypedValue.Of(Plan.Text.Find(PlanPath.Of("plot.name")));
            string kept = string.Concat(name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
            return kept.Length == 0 ? "plan.json" : $"{kept}.json";
        }
    }

    /// <summary>To the field where there is one; else to the line.</summary>
    private void GoToProblem(PlanProblem problem)
    {
        isText = isText || !PlanPlaces.IsField(problem.Path);
        goTo = isText ? null : problem.Path;
        goToLine = isText ? problem.Line : null;
    }

    private void GoToField(PlanPath field) => (isText, goTo) = (false, field.ToString());

    private Task GoToSectionAsync(string section) => Browser.GoToSectionAsync(SheetView.Id, section);
}
