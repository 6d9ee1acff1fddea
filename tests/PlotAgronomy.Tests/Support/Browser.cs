using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;

namespace PlotAgronomy.Tests.Support;

/// <summary>A real browser without a window, to print pages; tests that need it are skipped where none is installed.</summary>
internal static partial class Browser
{
    private static readonly string[] Known = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    internal static bool IsInstalled => Known.Any(File.Exists);

    /// <summary>Prints a page to PDF on the paper its style names.</summary>
    internal static byte[] Print(string html)
    {
        var folder = Directory.CreateTempSubdirectory("page");
        try
        {
            string page = Path.Combine(folder.FullName, "page.html"),
                pdf = Path.Combine(folder.FullName, "page.pdf");
            File.WriteAllText(page, html, Encoding.UTF8);
            var start = new ProcessStartInfo(Known.First(File.Exists)) { RedirectStandardError = true, RedirectStandardOutput = true };
            foreach (string option in new[] { "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", $"--user-data-dir={Path.Combine(folder.FullName, "profile")}", "--no-pdf-header-footer", $"--print-to-pdf={pdf}", page })
            {
                start.ArgumentList.Add(option);
            }

            using var browser = Process.Start(start)!;
            browser.ErrorDataReceived += (_, _) => { };
            browser.OutputDataReceived += (_, _) => { };
            browser.BeginErrorReadLine();
            browser.BeginOutputReadLine();
            Assert.True(browser.WaitForExit(TimeSpan.FromMinutes(2)), "the browser did not end");
            return File.ReadAllBytes(pdf);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    /// <summary>Sheets of paper in a PDF, whose page objects are not packed by this printer.</summary>
    internal static int PagesOf(byte[] pdf) => PageObject().Count(Encoding.Latin1.GetString(pdf));

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex PageObject();
}
