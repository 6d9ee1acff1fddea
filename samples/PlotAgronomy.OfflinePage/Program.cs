using Microsoft.AspNetCore.Components.WebAssembly.Hosting;
using Microsoft.Extensions.DependencyInjection;
using PlotAgronomy.OfflinePage;
using PlotAgronomy.OfflinePage.Plan;

var page = WebAssemblyHostBuilder.CreateDefault(args);
page.RootComponents.Add<App>("#page");
page.Services.AddSingleton<PlanDesk>();
page.Services.AddSingleton<Browser>();
await page.Build().RunAsync();
