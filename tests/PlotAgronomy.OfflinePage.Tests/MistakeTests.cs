using Microsoft.Playwright;
using PlotAgronomy.OfflinePage.Tests.Support;

namespace PlotAgronomy.OfflinePage.Tests;

/// <summary>What is wrong is told beside its field or with its line, in the library's words, and the page goes on.</summary>
public class MistakeTests(PublishedPage published)
{
    [Fact]
    public async Task A_slip_in_the_text_is_told_with_its_line_and_field()
    {
        string wrong = OpenPage.Demo.Replace("\"182 ft\"", "\"182 fet\"", StringComparison.Ordinal);
        var problem = Assert.Single(PlanFile.Read(wrong).Problems);
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypePlanAsync(wrong);
        var told = open.Page.Locator("#plan .problems li");
        Assert.Equal($"Plot, sides, length (line {problem.Line})", await told.Locator("button").InnerTextAsync());
        Assert.Equal(problem.Text, await told.Locator("span").InnerTextAsync());
        Assert.Equal(0, await open.Sheet.CountAsync());
    }

    [Theory, InlineData("{ \"planVersion\": 1,"), InlineData(""), InlineData("[]"), InlineData("\"half \\ud800\""), InlineData("<html>")]
    public async Task A_text_that_is_no_plan_is_told_and_can_be_mended(string text)
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypePlanAsync(text);
        string told = PlanFile.Read(text).Problems[0].Text;
        Assert.Equal(told, await open.Page.Locator("#plan .problems li span").First.InnerTextAsync());
        await open.PressAsync("Show as fields");
        await open.TypePlanAsync(OpenPage.Demo);
        Assert.Equal(LibrarySheet.WordsOf(OpenPage.Demo), await open.SheetOfAsync("Fern Bottom"));
        Assert.Empty(open.Errors);
    }

    [Theory, InlineData("$.plot.sides.length", "182"), InlineData("$.plantingDate", "next week"), InlineData("$.tillageDepth", "-5 in")]
    public async Task What_is_mistyped_is_told_below_its_field(string path, string typed)
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypeAsync(path, typed);
        var field = open.Page.Locator(".field", new() { Has = open.Field(path) });
        await field.Locator(".wrong").WaitForAsync();
        Assert.Equal("true", await open.Field(path).GetAttributeAsync("aria-invalid"));
        Assert.Equal(1, await field.Locator(".wrong").CountAsync());
        await Assertions.Expect(open.Page.Locator(".verdict")).ToContainTextAsync("1 entry");
        Assert.Equal(0, await open.Page.Locator("#blazor-error-ui:visible, .broken").CountAsync());
    }

    [Fact]
    public async Task A_mistake_in_what_is_folded_away_is_reached_by_its_button()
    {
        string wrong = OpenPage.Demo.Replace("\"germination\": \"78 %\"", "\"germination\": \"178 %\"", StringComparison.Ordinal);
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.TypePlanAsync(wrong);
        await open.PressAsync("Show as fields");
        await open.Page.Locator("#answers .problems button").First.ClickAsync();
        await Assertions.Expect(open.Field("$.materials.seedLots[2].germination")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task A_blank_plan_says_what_it_needs()
    {
        await using var open = await OpenPage.GoAsync(published);
        await open.PressAsync("Begin a blank plan");
        await Assertions.Expect(open.Page.Locator("[id='$.plot-wrong']")).ToContainTextAsync("sides");
        await open.TypeAsync("$.plot.area", "0.5 ac");
        Assert.Contains("There is no soil test", await open.SheetOfAsync("My plot"), StringComparison.Ordinal);
    }
}
