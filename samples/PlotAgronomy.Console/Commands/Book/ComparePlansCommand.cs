using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>compare plans A B</c>: two plans side by side.</summary>
internal static class ComparePlansCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var first = new Argument<string>("first") { Description = "Plan file." };
        var second = new Argument<string>("second") { Description = "Another plan file." };
        var options = new SheetOptions();
        var command = new Command("plans", "Two plans side by side: cost, seasons that feed, kinds that may be sown.")
        {
            first,
            second,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            string[] named = [parsed.GetValue(first)!, parsed.GetValue(second)!];
            return options.Write(parsed, streams, named[0], say =>
                PlansInput.Read(named, streams) is { } plans
                    ? PlansInput.Made(() => FieldSheet.Of(PlansSideBySide.Of(plans[0], plans[1])), say)
                    : null
            );
        });
        return command;
    }
}
