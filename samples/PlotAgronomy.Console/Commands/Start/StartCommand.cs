using System.CommandLine;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>start</c>: asks what lies on the table and writes a plan file of it.</summary>
internal static class StartCommand
{
    private const string UsualFile = "my-plot.json";

    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string>("file")
        {
            Description = "Plan file to write, or to go on with.",
            DefaultValueFactory = _ => UsualFile,
        };
        var command = new Command("start", "Ask one thing at a time and write a plan file of the answers.") { file };
        command.SetAction(parsed => Run(parsed.GetValue(file)!, streams));
        return command;
    }

    private static int Run(string file, ConsoleStreams streams)
    {
        if (OutputFile.WhyNot(file, input: null) is { } why)
        {
            streams.Error.WriteLine($"cannot write '{file}': {why}");
            return ExitCode.Usage;
        }

        if (Begin(file, streams.Error) is not { } draft)
        {
            return ExitCode.BadInput;
        }

        var writing = new Lock();
        void Keep(PlanDraft kept)
        {
            lock (writing)
            {
                OutputFile.Replace(file, kept.Text);
            }
        }

        void Interrupted(object? sender, ConsoleCancelEventArgs pressed)
        {
            lock (writing)
            {
                streams.Out.WriteLine();
                SayKept(file, streams.Out);
                streams.Out.Flush();
            }
        }

        Keep(draft);
        streams.Out.WriteLine(
            "One thing at a time. Enter, or \"I don't know\", leaves it open; \"back\" asks the one before again."
        );
        streams.Out.WriteLine($"Stop when you like: every answer is kept, and 'start {file}' goes on.");
        Console.CancelKeyPress += Interrupted;
        try
        {
            bool isDone = new StartInterview(draft, streams.In, streams.Out, Keep).Ask();
            streams.Out.WriteLine();
            if (isDone)
            {
                streams.Out.WriteLine($"'{file}' is written: 'plan {file}' prints the sheet; any text editor changes it.");
            }
            else
            {
                SayKept(file, streams.Out);
            }
        }
        finally
        {
            Console.CancelKeyPress -= Interrupted;
        }

        return ExitCode.Done;
    }

    private static void SayKept(string file, TextWriter output) =>
        output.WriteLine($"'{file}' keeps what you answered: 'start {file}' goes on, 'plan {file}' prints the sheet so far.");

    /// <summary>The plan that stands in the file, or an empty one; null, with what is wrong, where the file is no plan: that is
    /// not written over.</summary>
    private static PlanDraft? Begin(string file, TextWriter errors)
    {
        if (!File.Exists(file))
        {
            return PlanDraft.Empty();
        }

        var begun = PlanDraft.Begun(File.ReadAllText(file), new PlanFolder(file).Open, out var problems);
        foreach (string problem in problems)
        {
            errors.WriteLine($"{Path.GetFileName(file)}: {problem}");
        }

        return begun;
    }
}
