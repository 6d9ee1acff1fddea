using System.CommandLine;
using System.CommandLine.Parsing;

namespace PlotAgronomy.Sample.Commands;

/// <summary>All commands of the console.</summary>
internal static class RootCommands
{
    internal static RootCommand Create(ConsoleStreams streams)
    {
        var root = new RootCommand(
            "The sums behind a small wildlife food plot. Commands are verbs; without one, the demo is planned."
        )
        {
            StartCommand.Create(streams),
            PlanCommand.Create(streams),
            CheckCommand.Create(streams),
            ExplainCommand.Create(streams),
            CompareCommand.Create(streams),
            WhenCommand.Create(streams),
            CalendarCommand.Create(streams),
            UseUpCommand.Create(streams),
            RecordCommand.Create(streams),
            HistoryCommand.Create(streams),
            ReviewCommand.Create(streams),
            PropertyCommand.Create(streams),
            CalibrateCommand.Create(streams),
            CompletionCommand.Create(streams),
        };
        root.Subcommands.Add(CompleteCommand.Create(streams, root));
        HelpWithExample.AddTo(root);
        return root;
    }

    internal static int Parse(string[] args, ConsoleStreams streams)
    {
        var parsed = Create(streams).Parse(args);
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

        if (!args.Contains("--") && UnknownOption(parsed) is { } unknown)
        {
            streams.Error.WriteLine($"unknown option '{unknown}'; '{parsed.CommandResult.Command.Name} --help' lists all");
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

    /// <summary>A word with a hyphen that was taken for the name of a file.</summary>
    private static string? UnknownOption(ParseResult parsed) =>
        parsed
            .CommandResult.Children.OfType<ArgumentResult>()
            .SelectMany(argument => argument.Tokens)
            .Select(token => token.Value)
            .FirstOrDefault(word => word.Length > 1 && word.StartsWith('-'));
}
