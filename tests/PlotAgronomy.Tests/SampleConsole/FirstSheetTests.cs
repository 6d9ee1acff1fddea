using System.Diagnostics;
using System.Globalization;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>How many methods the runtime still compiles until the first sheet of a new process stands: the greater part of its
/// time that the code decides about. A time would tell how busy the machine is; see docs/speed.md.</summary>
public class FirstSheetTests
{
    /// <summary>Practice: what was counted when these were set (1,414 and 2,969), and a tenth more. A Release build compiles more
    /// ahead than a Debug build.</summary>
    private static int MostMethods => Configuration == "Release" ? 1600 : 3300;

    private static string Configuration => new DirectoryInfo(AppContext.BaseDirectory).Parent!.Name;

    [Theory]
    [InlineData("fall-blend")]
    [InlineData("frost-seeding")]
    public async Task Few_methods_are_compiled_before_the_first_sheet_stands(string plan)
    {
        string program = Repository.PathOf($"samples/PlotAgronomy.Console/bin/{Configuration}/net10.0/plot-agronomy.dll");
        var start = new ProcessStartInfo("dotnet", [program, "plan", Repository.PathOf($"samples/data/{plan}.json")])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment = { ["DOTNET_STARTUP_HOOKS"] = typeof(FirstSheetTests).Assembly.Location },
        };
        using var process = Process.Start(start)!;
        var stop = TestContext.Current.CancellationToken;
        var told = process.StandardError.ReadToEndAsync(stop);
        string sheet = await process.StandardOutput.ReadToEndAsync(stop);
        string methods = await told;
        await process.WaitForExitAsync(stop);

        Assert.True(process.ExitCode == 0, methods);
        Assert.NotEmpty(sheet);
        Assert.InRange(int.Parse(methods, NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture), 1, MostMethods);
    }
}
