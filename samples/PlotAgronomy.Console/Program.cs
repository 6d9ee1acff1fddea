using PlotAgronomy.Sample.Commands;
using Spectre.Console;

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
        return RootCommands.Parse(args.Length == 0 ? ["plan"] : args, streams);
    }
}
