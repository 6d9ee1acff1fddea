using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>compare bag FILE</c>: the plan's store blends against plain lots.</summary>
internal static class CompareBagCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = CompareCommand.File();
        var options = new SheetOptions();
        var command = new Command("bag", "A store's ready blend against the nearest blend from plain lots.") { file };
        options.AddTo(command);
        command.SetAction(parsed => options.Run(parsed, parsed.GetValue(file), streams, (plan, refuse) =>
            {
                if (!plan.StoreBlends.IsEmpty)
                {
                    return FieldSheet.Of(plan.CompareStoreBlends());
                }

                refuse(
                    $"{Path.GetFileName(parsed.GetValue(file))}: no ready blend stands in materials.storeBlends, so there is "
                        + "nothing to compare"
                );
                return null;
            }));
        return command;
    }
}
