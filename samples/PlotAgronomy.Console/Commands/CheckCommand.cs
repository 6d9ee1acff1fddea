using System.CommandLine;
using PlotAgronomy.PlanFiles;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>check FILE</c>: only looks for mistakes in a plan file, those of sense too.</summary>
internal static class CheckCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string>("file") { Description = "Plan file." };
        var command = new Command("check", "Report every mistake in a plan file, and nothing else.") { file };
        command.SetAction(parsed =>
        {
            string? path = parsed.GetValue(file);
            int code = PlanInput.Read(path, streams, out var plan);
            return plan is null ? code : InSense(plan, path!, streams);
        });
        return command;
    }

    /// <summary>What is written correctly and yet cannot be meant.</summary>
    private static int InSense(PlotPlan plan, string path, ConsoleStreams streams)
    {
        string name = Path.GetFileName(path);
        var doubts = PlanSense.Of(plan, File.ReadAllText(path));
        foreach (var doubt in doubts)
        {
            streams.Error.WriteLine($"{name}: {doubt}");
        }

        if (!doubts.IsEmpty)
        {
            return ExitCode.BadInput;
        }

        streams.Out.WriteLine($"{name}: no mistakes found");
        return ExitCode.Done;
    }
}
