using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>plan FILE</c>: the field sheet of a plan.</summary>
internal static class PlanCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string?>("file")
        {
            Description = "Plan file; the demo when left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var options = new SheetOptions();
        var command = new Command("plan", "Print the field sheet of a plan file.") { file };
        options.AddTo(command);
        command.SetAction(parsed =>
            options.Run(parsed, parsed.GetValue(file), streams, (plan, _) => FieldSheet.Of(plan.Solve()))
        );
        return command;
    }
}
