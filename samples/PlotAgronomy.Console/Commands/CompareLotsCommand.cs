using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>compare lots FILE</c>: the plan's lots of one kind by the cost of the same living stand.</summary>
internal static class CompareLotsCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = CompareCommand.File();
        var options = new SheetOptions();
        var command = new Command("lots", "Lots of one kind ranked by the cost of an acre of the same living stand.") { file };
        options.AddTo(command);
        command.SetAction(parsed => options.Run(parsed, parsed.GetValue(file), streams, (plan, refuse) =>
            {
                if (!plan.KindsInSeveralLots.IsEmpty)
                {
                    return FieldSheet.Of(plan.CompareSeedLots());
                }

                refuse(
                    $"{Path.GetFileName(parsed.GetValue(file))}: no kind stands twice or more in materials.seedLots, so there "
                        + "is nothing to compare"
                );
                return null;
            }));
        return command;
    }
}
