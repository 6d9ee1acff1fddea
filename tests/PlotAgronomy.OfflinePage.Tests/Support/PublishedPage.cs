using Microsoft.Playwright;
using PlotAgronomy.Tests.Packaging;
using PlotAgronomy.Tests.Support;

[assembly: AssemblyFixture(typeof(PlotAgronomy.OfflinePage.Tests.Support.PublishedPage))]

namespace PlotAgronomy.OfflinePage.Tests.Support;

/// <summary>The page, published once as it would be put on a host, and a browser to look at it.</summary>
/// <remarks>The environment variable <c>OFFLINE_PAGE</c> may name a folder in which it lies published already.</remarks>
public sealed class PublishedPage : IAsyncLifetime
{
    private static readonly string[] Browsers = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    private static readonly string[] Options = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("offline-page");
    private IPlaywright? playwright;

    internal string Root { get; private set; } = "";

    internal IBrowser Browser { get; private set; } = null!;

    public async ValueTask InitializeAsync()
    {
        Root = Environment.GetEnvironmentVariable("OFFLINE_PAGE") is { Length: > 0 } there ? there : Publish();
        playwright = await Playwright.CreateAsync();
        string browser = Browsers.FirstOrDefault(File.Exists) ?? throw new InvalidOperationException("No browser is installed (Debian's package chromium).");
        Browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = browser, Args = Options });
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.CloseAsync();
        playwright?.Dispose();
        folder.Delete(recursive: true);
    }

    /// <summary>All that is built for it lies in a folder of its own: other tests build the same library at the same time.</summary>
    private string Publish()
    {
        string site = Path.Combine(folder.FullName, "site"), built = Path.Combine(folder.FullName, "built");
        (int exitCode, string said) = DotnetCommand.Run(Repository.Root, "publish", "samples/PlotAgronomy.OfflinePage", "-c", "Release", "-p:RunAnalyzers=false", "--artifacts-path", built, "-o", site);
        return exitCode == 0 ? Path.Combine(site, "wwwroot") : throw new InvalidOperationException(said);
    }
}
