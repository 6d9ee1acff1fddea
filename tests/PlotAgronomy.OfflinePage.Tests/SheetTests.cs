using PlotAgronomy.OfflinePage.Tests.Support;

namespace PlotAgronomy.OfflinePage.Tests;

/// <summary>The sheet on the page against the one that the library writes in a process of its own: compiled, not interpreted, and
/// untrimmed.</summary>
public class SheetTests(PublishedPage published)
{
    [Fact]
    public async Task The_sheet_of_the_demo_plan_is_the_librarys()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        Assert.Equal(LibrarySheet.WordsOf(OpenPage.Demo), await open.SheetOfAsync("Fern Bottom"));
        Assert.Empty(open.Errors);
    }

    [Theory, InlineData("frost-seeding"), InlineData("county-report"), InlineData("paced-corner"), InlineData("store-blend")]
    public async Task So_is_that_of_every_other_plan(string name)
    {
        string plan = File.ReadAllText(PlotAgronomy.Tests.Support.Repository.PathOf($"samples/data/{name}.json"));
        await using var open = await OpenPage.GoAsync(published);
        await open.Page.Locator("#open").SetInputFilesAsync(new Microsoft.Playwright.FilePayload { Name = "p.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(plan) });
        await open.Sheet.WaitForAsync();
        Assert.Equal(LibrarySheet.WordsOf(plan), await open.SheetOfAsync(PlanFile.Read(plan).Plan!.Plot.Name));
        Assert.Empty(open.Errors);
    }

    [Fact]
    public async Task What_is_typed_into_a_field_changes_the_sheet()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypeAsync("$.plot.name", "Alder Hook");
        await open.TypeAsync("$.plot.sides.length", "300 ft");
        await open.Sheet.GetByText("42,000 ft2").First.WaitForAsync(); // 300 x 140
        string plan = OpenPage.Demo.Replace("Fern Bottom", "Alder Hook", StringComparison.Ordinal).Replace("182 ft", "300 ft", StringComparison.Ordinal);
        Assert.Equal(LibrarySheet.WordsOf(plan), await open.SheetOfAsync("Alder Hook"));
    }

    [Fact]
    public async Task The_verdict_stands_first_and_each_question_leads_to_its_field()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        Assert.StartsWith("Not sure yet", await open.Page.Locator(".verdict").InnerTextAsync(), StringComparison.Ordinal);
        await open.PressAsync("Fill in: Plot, planting region");
        // The field is folded away: it is made first, and comes a moment later.
        await open.Page.WaitForFunctionAsync("id => document.activeElement.id === id", "$.plot.plantingRegion");
        await open.Field("$.plot.plantingRegion").SelectOptionAsync("Central");
        await open.Page.Locator(".verdict", new() { HasText = "Yes" }).Or(open.Page.Locator(".verdict", new() { HasNotText = "the region" })).First.WaitForAsync();
        Assert.Equal(0, await open.Page.Locator(".questions").GetByText("In which region").CountAsync());
    }

    [Fact]
    public async Task No_day_is_written_before_somebody_types_it_or_asks_for_today()
    {
        await using var open = await OpenPage.GoAsync(published);
        await open.PressAsync("Begin a blank plan");
        await open.TypeAsync("$.plot.area", "0.5 ac");
        await open.Sheet.WaitForAsync();
        Assert.Equal("", await open.Field("$.plantingDate").InputValueAsync());
        await open.Page.Locator(".field", new() { Has = open.Field("$.plantingDate") }).GetByText("Today").ClickAsync();
        string today = await open.Page.EvaluateAsync<string>("new Date().toLocaleDateString('sv')");
        await Microsoft.Playwright.Assertions.Expect(open.Field("$.plantingDate")).ToHaveValueAsync(today);
    }
}
