using System.Diagnostics;
using System.Text.RegularExpressions;
using PlotAgronomy.Tests.Packaging;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleScripts;

/// <summary>A script that serves, run as a reader runs it, on a port that was free.</summary>
internal sealed partial class RunningService : IDisposable
{
    private readonly Process process;

    private RunningService(Process process, string address) =>
        (this.process, Client) = (process, new() { BaseAddress = new(address), Timeout = TimeSpan.FromMinutes(1) });

    internal HttpClient Client { get; }

    internal static async Task<RunningService> StartAsync(string script, params string[] arguments)
    {
        var process = DotnetCommand.Start("dotnet", Repository.Root, ["run", script, "--", .. arguments]);
        var errors = process.StandardError.ReadToEndAsync();
        string said = "";
        while (await process.StandardOutput.ReadLineAsync() is { } line)
        {
            said += $"{line}\n";
            if (Listening().Match(line) is { Success: true } found)
            {
                _ = process.StandardOutput.ReadToEndAsync();
                return new(process, found.Groups[1].Value);
            }
        }

        throw new InvalidOperationException($"The service did not start.\n{said}{await errors}");
    }

    public void Dispose()
    {
        process.Kill(entireProcessTree: true);
        process.Dispose();
        Client.Dispose();
    }

    [GeneratedRegex(@"Now listening on: (http://127\.0\.0\.1:[0-9]+)")]
    private static partial Regex Listening();
}
