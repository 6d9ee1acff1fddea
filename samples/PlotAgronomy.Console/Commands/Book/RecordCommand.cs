using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>record PLAN</c>: the blanks of the sheet, or single entries, into the plot book.</summary>
internal static class RecordCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string>("plan") { Description = "Plan file." };
        var entry = new Argument<string[]>("entry")
        {
            Description = "A single entry, such as: rain 0.8 in 2026-09-20. Left out, the blanks of the sheet are asked.",
            Arity = ArgumentArity.ZeroOrMore,
        };
        var lines = new Option<string?>("--entries")
        {
            Description = "File with single entries, one a line; '-' reads them as they are typed.",
        };
        var options = new BookOptions();
        var command = new Command("record", "Write into the plot book what was really done and seen.") { file, entry };
        command.Options.Add(lines);
        options.AddTo(command, writes: true);
        command.SetAction(parsed =>
        {
            string path = parsed.GetValue(file)!;
            int code = PlanInput.Read(path, streams, out var plan);
            if (plan is null)
            {
                return code;
            }

            string folder = options.FolderFor(parsed, path);
            if (options.Open(parsed, folder, writes: true, streams.Error.WriteLine) is not { } book)
            {
                return ExitCode.BadInput;
            }

            var keeper = new BookKeeper(plan.Solve(), book, folder, streams);
            string[] words = parsed.GetValue(entry) ?? [];
            return parsed.GetValue(lines) is { } script ? keeper.WriteLines(script)
                : words.Length > 0 ? keeper.WriteOne(string.Join(' ', words))
                : keeper.AskAll();
        });
        return command;
    }
}
