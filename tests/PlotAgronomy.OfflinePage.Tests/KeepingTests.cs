using Microsoft.Playwright;
using PlotAgronomy.OfflinePage.Tests.Support;

namespace PlotAgronomy.OfflinePage.Tests;

/// <summary>What is kept, and where: on the owner's disk and in this browser, nowhere else.</summary>
public class KeepingTests(PublishedPage published)
{
    [Fact]
    public async Task A_saved_file_reads_back_as_the_same_plan()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        string saved = await SaveAsync(open);
        Assert.Equal(OpenPage.Demo, saved);
        await open.TypeAsync("$.tillageDepth", "4 in");
        saved = await SaveAsync(open);
        string edited = OpenPage.Demo.Replace("\"tillageDepth\": \"6 in\"", "\"tillageDepth\": \"4 in\"", StringComparison.Ordinal);
        Assert.Equal(PlanFile.Write(PlanFile.Read(edited).Plan!), PlanFile.Write(PlanFile.Read(saved).Plan!));
    }

    [Fact]
    public async Task Comments_and_units_are_kept_when_a_field_is_changed()
    {
        string plan = File.ReadAllText(PlotAgronomy.Tests.Support.Repository.PathOf("samples/data/paced-corner.json"));
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypePlanAsync(plan);
        await open.PressAsync("Show as fields");
        await open.TypeAsync("$.tillageDepth", "4 in");
        Assert.Equal(plan.Replace("\"5 in\"", "\"4 in\"", StringComparison.Ordinal), await SaveAsync(open));
    }

    [Fact]
    public async Task Nothing_is_asked_of_any_other_host()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypeAsync("$.plot.name", "Alder Hook");
        await open.SheetOfAsync("Alder Hook");
        await SaveAsync(open);
        Assert.NotEmpty(open.Asked);
        Assert.All(open.Asked, address => Assert.True(address.StartsWith(open.Address, StringComparison.Ordinal) || address.StartsWith("data:", StringComparison.Ordinal) || address.StartsWith($"blob:{open.Address}", StringComparison.Ordinal), address));
        await Assert.ThrowsAsync<PlaywrightException>(() => open.Page.EvaluateAsync("fetch('http://127.0.0.1:9/')"));
        Assert.Contains(open.Errors, e => e.Contains("Content Security Policy", StringComparison.Ordinal));
    }

    [Fact]
    public async Task After_the_first_visit_the_page_needs_no_network()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.Page.EvaluateAsync("navigator.serviceWorker.ready");
        await open.StopServerAsync();
        await open.Page.Context.SetOfflineAsync(true);
        await open.Page.ReloadAsync();
        Assert.Equal(LibrarySheet.WordsOf(OpenPage.Demo), await open.SheetOfAsync("Fern Bottom"));
        await open.PressAsync("Close the plan");
        await open.PressAsync("Begin a blank plan");
        await open.TypeAsync("$.plot.area", "0.5 ac");
        await open.SheetOfAsync("My plot");
    }

    [Fact]
    public async Task A_plan_that_is_closed_is_forgotten()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.PressAsync("Close the plan");
        await open.Page.ReloadAsync();
        await open.Page.GetByText("Begin a blank plan").WaitForAsync();
        Assert.Equal(0, await open.Page.EvaluateAsync<int>("localStorage.length"));
    }

    private static async Task<string> SaveAsync(OpenPage open)
    {
        var download = await open.Page.RunAndWaitForDownloadAsync(() => open.PressAsync("Save the plan"));
        return await File.ReadAllTextAsync(await download.PathAsync());
    }
}
