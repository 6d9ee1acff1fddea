using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>check FILE</c>: only validates a plan file.</summary>
internal static class CheckCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string>("file") { Description = "Plan file." };
        var command = new Command("check", "Report every mistake in a plan file, and nothing else.") { file };
        command.SetAction(parsed =>
        {
            int code = PlanInput.Read(parsed.GetValue(file), streams, out var plan);
            if (plan is not null)
            {
                streams.Out.WriteLine($"{Path.GetFileName(parsed.GetValue(file))}: no mistakes found");
            }

            return code;
        });
        return command;
    }
}
