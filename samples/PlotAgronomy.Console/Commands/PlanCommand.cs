using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>plan FILE</c>: the field sheet of a plan.</summary>
internal static class PlanCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string?>("file") { Description = "Plan file; the demo when left out.", Arity = ArgumentArity.ZeroOrOne };
        var format = new Option<SheetFormat>("--format") { Description = "text, markdown or json." };
        var work = new Option<bool>("--work") { Description = "Show all working." };
        var output = new Option<string?>("--output") { Description = "Write to this file instead of the screen." };
        var width = new Option<int?>("--width") { Description = "Characters a line of text may have (60 to 200)." };
        var command = new Command("plan", "Print the field sheet of a plan file.") { file, format, work, output, width };
        command.SetAction(parsed =>
        {
            int? columns = parsed.GetValue(width);
            if (columns is < 60 or > 200)
            {
                streams.Error.WriteLine($"--width must be from 60 to 200, found {columns.Value.ToString(System.Globalization.CultureInfo.InvariantCulture)}");
                return ExitCode.Usage;
            }

            int code = PlanInput.Read(parsed.GetValue(file), streams, out var plan);
            return plan is null ? code : SheetOutput.Write(SheetBuilder.Build(plan), parsed.GetValue(format), parsed.GetValue(work), columns, parsed.GetValue(output), streams);
        });
        return command;
    }
}
