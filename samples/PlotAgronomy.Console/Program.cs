using PlotAgronomy.Sample.Commands;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample;

/// <summary>Entry of the sample console.</summary>
public static class Program
{
    /// <summary>Runs one command; without arguments it plans the demo.</summary>
    /// <param name="args">Command line.</param>
    /// <returns>Exit code, see <see cref="ExitCode"/>.</returns>
    public static int Main(string[] args) => Run(args, ConsoleStreams.Standard());

    /// <summary>Runs one command against given streams, for tests.</summary>
    internal static int Run(string[] args, ConsoleStreams streams)
    {
        ArgumentNullException.ThrowIfNull(args);
        using var progress = new Progress(streams.Error, streams.Interactive, TimeProvider.System);
        var plain = streams.WithoutControlCharacters(progress.Stop);
        try
        {
            int code = RootCommands.Parse(args.Length == 0 ? ["plan"] : args, plain);
            plain.Out.Flush();
            return code;
        }
        catch (Exception refused) when (IsOfTheSystem(refused))
        {
            Say(plain.Error, $"cannot go on: {refused.Message}");
            return ExitCode.Usage;
        }
    }

    /// <summary>What the system refuses: a full disk, a closed screen, a right that is missing. Anything else is a fault of the
    /// program and stays visible.</summary>
    private static bool IsOfTheSystem(Exception refused) =>
        refused is IOException or UnauthorizedAccessException or ObjectDisposedException;

    /// <summary>Where the errors themselves cannot be written, the exit code alone tells.</summary>
    private static void Say(TextWriter errors, string line)
    {
        try
        {
            errors.WriteLine(line);
            errors.Flush();
        }
        catch (Exception refused) when (IsOfTheSystem(refused))
        {
            return;
        }
    }
}
