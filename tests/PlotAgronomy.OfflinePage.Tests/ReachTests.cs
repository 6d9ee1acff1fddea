using Microsoft.Playwright;
using PlotAgronomy.OfflinePage.Tests.Support;

namespace PlotAgronomy.OfflinePage.Tests;

/// <summary>The page by keyboard alone, on a phone, and on paper.</summary>
/// <remarks>Targets of 24 px and a page without sideways scrolling at 320 px: Web Content Accessibility Guidelines 2.2, criteria
/// 2.5.8 and 1.4.10.</remarks>
public class ReachTests(PublishedPage published)
{
    private static readonly ViewportSize Phone = new() { Width = 375, Height = 720 };

    [Fact]
    public async Task The_keyboard_alone_leads_from_a_blank_plan_to_a_sheet()
    {
        await using var open = await OpenPage.GoAsync(published);
        await TabToAsync(open, "Begin a blank plan");
        await open.Page.Keyboard.PressAsync("Enter");
        await open.Field("$.plot.area").WaitForAsync();
        await TabToAsync(open, "$.plot.name");
        await open.Page.Keyboard.PressAsync("Control+A");
        await open.Page.Keyboard.TypeAsync("Alder Hook");
        await TabToAsync(open, "$.plot.area");
        await open.Page.Keyboard.TypeAsync("0.5 ac");
        await open.Page.Keyboard.PressAsync("Tab");
        Assert.Contains("There is no soil test", await open.SheetOfAsync("Alder Hook"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Where_the_keyboard_is_can_be_seen()
    {
        await using var open = await OpenPage.GoAsync(published);
        await open.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("solid 3px", await open.Page.EvaluateAsync<string>("(s => `${s.outlineStyle} ${s.outlineWidth}`)(getComputedStyle(document.activeElement))"));
    }

    [Theory, InlineData(375), InlineData(320)]
    public async Task On_a_phone_nothing_scrolls_sideways(int width)
    {
        await using var open = await OpenPage.WithDemoAsync(published, new() { Width = width, Height = 720 });
        await OpenAllAsync(open);
        Assert.Equal(width, await open.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"));
        string[] wider = await open.Page.EvaluateAsync<string[]>("w => [...document.getElementById('sheet').shadowRoot.querySelectorAll('*')].filter(e => e.getBoundingClientRect().right > w + 1 && getComputedStyle(e).position != 'absolute' && !e.closest('thead')).map(e => e.outerHTML.slice(0, 80))", width);
        Assert.Empty(wider);
    }

    [Fact]
    public async Task On_a_phone_every_control_can_be_hit()
    {
        await using var open = await OpenPage.WithDemoAsync(published, Phone);
        await OpenAllAsync(open);
        string[] small = await open.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('button, input, select, textarea, summary, a')].filter(e => e.checkVisibility() && (e.getBoundingClientRect().height < 24 || e.getBoundingClientRect().width < 24)).map(e => e.outerHTML.slice(0, 80))");
        Assert.Empty(small);
    }

    [Fact]
    public async Task Every_field_has_its_label()
    {
        await using var open = await OpenPage.WithDemoAsync(published, Phone);
        await OpenAllAsync(open);
        string[] bare = await open.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('input, select, textarea')].filter(e => e.labels.length != 1).map(e => e.id)");
        Assert.Empty(bare);
    }

    [Fact]
    public async Task On_paper_there_is_the_sheet_alone()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        await open.Page.EmulateMediaAsync(new() { Media = Media.Print });
        string[] seen = await open.Page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('body *')].filter(e => e.checkVisibility() && e.id != 'sheet' && !e.querySelector('#sheet') && e.getBoundingClientRect().height > 0).map(e => e.outerHTML.slice(0, 80))");
        Assert.Empty(seen);
        Assert.Equal("block", await open.Sheet.EvaluateAsync<string>("m => getComputedStyle(m).display"));
    }

    /// <summary>As many pages as the library's own page of the sheet gives on the same paper.</summary>
    [Fact]
    public async Task It_prints_on_as_many_pages_as_the_librarys_page()
    {
        await using var open = await OpenPage.WithDemoAsync(published);
        byte[] printed = await open.Page.PdfAsync(new() { Format = "Letter", PreferCSSPageSize = true });
        await open.Page.SetContentAsync(FieldSheet.Of(PlanFile.Read(OpenPage.Demo).Plan!.Solve()).ToHtml());
        byte[] library = await open.Page.PdfAsync(new() { Format = "Letter", PreferCSSPageSize = true });
        Assert.Equal(PagesOf(library), PagesOf(printed));
    }

    private static int PagesOf(byte[] pdf) => System.Text.RegularExpressions.Regex.Count(System.Text.Encoding.Latin1.GetString(pdf), @"/Type\s*/Page\b(?!s)");

    private static async Task OpenAllAsync(OpenPage open) => await open.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");

    /// <summary>Presses Tab until the element of that text or id has the focus.</summary>
    private static async Task TabToAsync(OpenPage open, string wanted)
    {
        for (int i = 0; i < 60; i++)
        {
            await open.Page.Keyboard.PressAsync("Tab");
            if (await open.Page.EvaluateAsync<bool>("w => document.activeElement.id == w || document.activeElement.innerText == w", wanted))
            {
                return;
            }
        }

        Assert.Fail($"Tab does not lead to {wanted}.");
    }
}
