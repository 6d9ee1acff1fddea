using System.Diagnostics;

namespace PlotAgronomy.Tests.Packaging;

/// <summary>Runs the SDK's command in a folder and hands back all it printed.</summary>
internal static class DotnetCommand
{
    /// <summary>Tests that build the library anew run in turn: all write into its one folder of intermediate files.</summary>
    internal const string BuildsOfTheLibrary = "builds of the library";

    internal static (int ExitCode, string Output) Run(string folder, params string[] arguments) => RunProgram("dotnet", folder, arguments);

    internal static (int ExitCode, string Output) RunProgram(string program, string folder, params string[] arguments)
    {
        using var process = Start(program, folder, arguments);
        var errors = process.StandardError.ReadToEndAsync();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output + errors.GetAwaiter().GetResult());
    }

    /// <summary>Starts a program that goes on by itself; what it prints is the caller's to read.</summary>
    internal static Process Start(string program, string folder, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (string name in start.Environment.Keys.Where(k => k.StartsWith("MSBUILD", StringComparison.OrdinalIgnoreCase) || k.StartsWith("TESTINGPLATFORM", StringComparison.OrdinalIgnoreCase)).ToList())
        {
            start.Environment.Remove(name);
        }

        start.Environment["DOTNET_CLI_UI_LANGUAGE"] = "en";
        return Process.Start(start)!;
    }
}
