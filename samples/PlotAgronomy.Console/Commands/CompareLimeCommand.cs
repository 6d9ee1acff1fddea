using System.CommandLine;
using System.Globalization;
using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>compare lime FILE</c>: the plan's soil through every lime method that accepts its reading.</summary>
internal static class CompareLimeCommand
{
    private const double LowestTarget = 4;
    private const double HighestTarget = 9;

    internal static Command Create(ConsoleStreams streams)
    {
        var file = CompareCommand.File();
        var target = new Option<string?>("--target") { Description = "pH to aim at (4 to 9); the plan's own when left out." };
        var material = new Option<string?>("--material")
        {
            Description = "Liming material of the plan to count every rate in; pure calcium carbonate when left out.",
        };
        var fromMemory = CompareCommand.FromMemory("methods");
        var options = new SheetOptions();
        var command = new Command("lime", "One soil through every lime method that accepts its reading, on one common basis.")
        {
            file,
            target,
            material,
            fromMemory,
        };
        options.AddTo(command);
        command.SetAction(parsed =>
            options.Run(parsed, parsed.GetValue(file), streams, (plan, refuse) =>
                TryReadTarget(parsed.GetValue(target), refuse, out double? targetPh)
                && TryFindMaterial(plan, parsed.GetValue(material), refuse, out var common)
                    ? FieldSheet.Of(plan.CompareLime(targetPh, parsed.GetValue(fromMemory), common))
                    : null
            )
        );
        return command;
    }

    private static bool TryReadTarget(string? text, Action<string> refuse, out double? targetPh)
    {
        targetPh = null;
        if (text is null)
        {
            return true;
        }

        if (
            double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double ph)
            && ph is >= LowestTarget and <= HighestTarget
        )
        {
            targetPh = ph;
            return true;
        }

        refuse($"--target: expected a pH from 4 to 9, found '{text}'");
        return false;
    }

    private static bool TryFindMaterial(PlotPlan plan, string? name, Action<string> refuse, out LimingMaterial? material)
    {
        material = plan.LimeOffers.FirstOrDefault(o => o.Item.Name.Equals(name, StringComparison.OrdinalIgnoreCase))?.Item;
        if (name is null || material is not null)
        {
            return true;
        }

        string offered = plan.LimeOffers.IsEmpty ? "no lime" : string.Join(", ", plan.LimeOffers.Select(o => $"'{o.Item.Name}'"));
        refuse($"--material: the plan offers no '{name}'; it offers {offered}");
        return false;
    }
}
