using Microsoft.JSInterop;

namespace PlotAgronomy.OfflinePage;

/// <summary>What the browser alone can do: its printer, its disk, its calendar, its keyboard's place.</summary>
internal sealed class Browser(IJSRuntime runtime)
{
    private readonly Lazy<Task<IJSObjectReference>> page = new(() =>
        runtime.InvokeAsync<IJSObjectReference>("import", "./page.js").AsTask()
    );

    /// <summary>Today's date as a plan writes it.</summary>
    internal async Task<string> TodayAsync() => await (await page.Value).InvokeAsync<string>("today");

    /// <summary>Hands a file over to be saved.</summary>
    internal Task SaveAsync(string name, string text) => DoAsync("save", name, text);

    internal Task PrintAsync() => DoAsync("print");

    /// <summary>Shows a page of the library inside an element, with the library's own style.</summary>
    internal Task ShowAsync(string id, string html) => DoAsync("show", id, html);

    /// <summary>Opens all that an element is folded away in, and goes there.</summary>
    internal Task GoToAsync(string id) => DoAsync("goTo", id);

    /// <summary>Goes to a section of the sheet.</summary>
    internal Task GoToSectionAsync(string id, string section) => DoAsync("goToSection", id, section);

    /// <summary>Goes to a line of a text.</summary>
    internal Task GoToLineAsync(string id, int line) => DoAsync("goToLine", id, line);

    /// <summary>Keeps the plan in this browser until it is closed; null forgets it. False where the browser keeps
    /// nothing.</summary>
    internal async Task<bool> KeepAsync(string? text) => await (await page.Value).InvokeAsync<bool>("keep", text);

    /// <summary>The plan that was kept, or null.</summary>
    internal async Task<string?> KeptAsync() => await (await page.Value).InvokeAsync<string?>("kept");

    private async Task DoAsync(string name, params object?[] arguments) =>
        await (await page.Value).InvokeVoidAsync(name, arguments);
}
