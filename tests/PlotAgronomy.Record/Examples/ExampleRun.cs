using System.Diagnostics;

namespace PlotAgronomy.Record.Examples;

/// <summary>One run of the built test program that writes down the answers of its examples.</summary>
internal sealed class ExampleRun
{
    /// <summary>The variable that names the file to write; the tests know it by the same name.</summary>
    private const string Variable = "PLOT_RECORD_EXAMPLES";

    private const int SomeTestsFailed = 2;

    internal required bool AllPassed { get; init; }

    internal required IReadOnlyList<ExampleAnswer> Answers { get; init; }

    internal static ExampleRun OfTheBuiltTests()
    {
        string answers = Path.Combine(Path.GetTempPath(), $"plot-examples-{Environment.ProcessId}.tsv");
        try
        {
            int exit = Run(TestProgram(), answers);
            return exit is 0 or SomeTestsFailed
                ? new ExampleRun { AllPassed = exit == 0, Answers = [.. File.ReadLines(answers).Select(ExampleAnswer.Read)] }
                : throw new InvalidOperationException($"The test program ended with {exit}.");
        }
        finally
        {
            File.Delete(answers);
        }
    }

    private static int Run(string program, string answers)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList =
            {
                program, "--filter-not-trait", "Category=Slow",
                "--filter-not-namespace", "PlotAgronomy.Tests.Packaging*", "--progress", "off",
            },
            RedirectStandardOutput = true,
        };
        start.Environment[Variable] = answers;
        using var tests = Process.Start(start)!;
        tests.StandardOutput.ReadToEnd();
        tests.WaitForExit();
        return tests.ExitCode;
    }

    /// <summary>The test program of the checkout this program stands in, as it was built last.</summary>
    private static string TestProgram() =>
        new DirectoryInfo(Path.Combine(Root(), "tests", "PlotAgronomy.Tests", "bin"))
            .EnumerateFiles("PlotAgronomy.Tests.dll", SearchOption.AllDirectories)
            .MaxBy(f => f.LastWriteTimeUtc)?.FullName ?? throw new FileNotFoundException("Build the tests first.");

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "PlotAgronomy.sln")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("The record is made inside a checkout.");
        }

        return folder.FullName;
    }
}
