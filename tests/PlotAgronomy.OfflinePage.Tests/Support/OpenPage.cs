using Microsoft.Playwright;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.OfflinePage.Tests.Support;

/// <summary>The page in a window of its own, without memory of earlier visits.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private static readonly ViewportSize Desk = new() { Width = 1280, Height = 900 };

    private readonly StaticSite site;

    private OpenPage(StaticSite site, IPage page, List<string> asked)
    {
        (this.site, Page, Asked) = (site, page, asked);
        page.PageError += (_, error) => Errors.Add(error);
        page.Console += (_, said) => Errors.AddRange(said.Type == "error" ? [said.Text] : Array.Empty<string>());
    }

    internal IPage Page { get; }

    /// <summary>Every address that was asked for.</summary>
    internal List<string> Asked { get; }

    /// <summary>What the browser complained of.</summary>
    internal List<string> Errors { get; } = [];

    internal string Address => site.Address;

    internal static string Demo => File.ReadAllText(Repository.PathOf("samples/data/fall-blend.json"));

    internal ILocator Sheet => Page.Locator("#sheet main");

    internal static async Task<OpenPage> GoAsync(PublishedPage published, ViewportSize? size = null)
    {
        var site = await StaticSite.StartAsync(published.Root);
        var context = await published.Browser.NewContextAsync(new() { ViewportSize = size ?? Desk, AcceptDownloads = true });
        var asked = new List<string>();
        context.Request += (_, request) => asked.Add(request.Url);
        var open = new OpenPage(site, await context.NewPageAsync(), asked);
        await open.Page.GotoAsync(site.Address);
        await open.Page.Locator(".tools").WaitForAsync();
        return open;
    }

    internal static async Task<OpenPage> WithDemoAsync(PublishedPage published, ViewportSize? size = null)
    {
        var open = await GoAsync(published, size);
        await open.PressAsync("Look at a demo plan");
        await open.Sheet.WaitForAsync();
        return open;
    }

    internal Task PressAsync(string button) => Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync();

    internal ILocator Field(string path) => Page.Locator($"[id='{path}']");

    internal async Task TypeAsync(string path, string typed)
    {
        await Field(path).FillAsync(typed);
        await Field(path).BlurAsync();
    }

    /// <summary>The whole plan typed anew as text.</summary>
    internal async Task TypePlanAsync(string plan)
    {
        if (await Page.Locator("#plan-text").CountAsync() == 0)
        {
            await PressAsync("Show as text");
        }

        await Page.Locator("#plan-text").FillAsync(plan);
        await Page.Locator("#plan-text").BlurAsync();
    }

    /// <summary>The sheet as it stands there, once it says what it should.</summary>
    internal async Task<string> SheetOfAsync(string title)
    {
        await Sheet.Locator("h1", new() { HasText = title }).WaitForAsync();
        return await Sheet.EvaluateAsync<string>("m => m.textContent");
    }

    internal Task StopServerAsync() => site.StopAsync();

    public async ValueTask DisposeAsync()
    {
        await Page.Context.CloseAsync();
        await site.DisposeAsync();
    }
}
