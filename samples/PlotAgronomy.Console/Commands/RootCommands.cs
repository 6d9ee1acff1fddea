using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary>All commands of the console.</summary>
internal static class RootCommands
{
    internal static int Parse(string[] args, ConsoleStreams streams)
    {
        var root = new RootCommand(
            "The sums behind a small wildlife food plot. Commands are verbs; without one, the demo is planned."
        )
        {
            PlanCommand.Create(streams),
            CheckCommand.Create(streams),
            ExplainCommand.Create(streams),
            CompareCommand.Create(streams),
            CalibrateCommand.Create(streams.In, streams.Out, streams.Error),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            streams.Error.WriteLine(
                string.Join(
                    " ",
                    parsed.Errors.Select(e =>
                        string.Join(" ", e.Message.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries))
                    )
                )
            );
            return ExitCode.Usage;
        }

        return parsed.Invoke(
            new InvocationConfiguration
            {
                Output = streams.Out,
                Error = streams.Error,
                EnableDefaultExceptionHandler = false,
            }
        );
    }
}
