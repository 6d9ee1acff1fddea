using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>use-up FILE</c>: how much ground what is there will do.</summary>
internal static class UseUpCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = CompareCommand.File();
        var options = new SheetOptions();
        var command = new Command("use-up", "How much ground what is there will do, what runs out first and what is short.")
        {
            file,
        };
        options.AddTo(command);
        command.SetAction(parsed => options.Run(parsed, parsed.GetValue(file), streams, (plan, refuse) =>
            {
                var counted = plan.UseUp();
                if (counted.TryGet(out var found))
                {
                    return FieldSheet.Of(found);
                }

                string name = Path.GetFileName(parsed.GetValue(file))!;
                refuse(
                    counted.State == AnswerState.NoneNeeded
                        ? $"{name}: nothing on offer says how much there is of it: type 'available' beside a package"
                        : $"{name}: {string.Join(" ", counted.Questions.Select(q => q.Text))}"
                );
                return null;
            }));
        return command;
    }
}
