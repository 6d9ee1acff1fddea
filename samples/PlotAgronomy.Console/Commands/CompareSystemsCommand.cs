using System.CommandLine;
using PlotAgronomy.Nutrients;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>compare systems FILE</c>: the plan's report through every recommendation system that accepts it.</summary>
internal static class CompareSystemsCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = CompareCommand.File();
        var crop = new Option<string?>("--crop")
        {
            Description =
                "Crop row to ask every system for, such as 'alfalfa'; the rows the plan's kinds are taken as when left out.",
            HelpName = "crop",
        };
        crop.CompletionSources.Add([.. Enum.GetValues<CropRow>().Select(CropRows.WordsFor)]);
        var fromMemory = CompareCommand.FromMemory("systems");
        var options = new SheetOptions();
        var command = new Command("systems", "One soil report through every recommendation system that accepts it.")
        {
            file,
            crop,
            fromMemory,
        };
        options.AddTo(command);
        command.SetAction(parsed => options.Run(parsed, parsed.GetValue(file), streams, (plan, refuse) =>
            {
                if (parsed.GetValue(crop) is not { } words)
                {
                    return FieldSheet.Of(plan.CompareSystems(includeFromMemory: parsed.GetValue(fromMemory)));
                }

                if (CropRows.TryFind(words, out var row, out string problem))
                {
                    return FieldSheet.Of(plan.CompareSystems(row, parsed.GetValue(fromMemory)));
                }

                refuse($"--crop: {problem}");
                return null;
            }));
        return command;
    }
}
