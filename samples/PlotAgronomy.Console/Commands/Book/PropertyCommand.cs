using System.CommandLine;
using System.Globalization;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>property FILES</c>: what several plots buy together, and what is left out for a budget.</summary>
internal static class PropertyCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var files = new Argument<string[]>("files") { Description = "Plan files, one a plot.", Arity = ArgumentArity.OneOrMore };
        var budget = new Option<string?>("--budget")
        {
            Description = "Most that may be spent; what harms least is left out until it is enough.",
        };
        var options = new SheetOptions();
        var command = new Command("property", "Shop for several plots together: whole bags shared.") { files };
        command.Options.Add(budget);
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            string[] named = parsed.GetValue(files) ?? [];
            return options.Write(parsed, streams, named[0], say =>
                PlansInput.Read(named, streams) is { } plans
                    ? PlansInput.Made(() => Sheet(PropertyPlan.Of(plans), parsed.GetValue(budget), streams), say)
                    : null
            );
        });
        return command;
    }

    private static FieldSheet Sheet(PropertyPlan property, string? budget, ConsoleStreams streams)
    {
        if (budget is null)
        {
            return FieldSheet.Of(property);
        }

        if (!decimal.TryParse(budget, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal most))
        {
            throw new ArgumentException($"--budget: expected an amount of money such as 250, found '{budget}'");
        }

        var (kept, _) = property.Within(most);
        if (kept.Cost > most)
        {
            streams.Out.WriteLine(
                $"Even the least that is left costs {property.Currency.Print(kept.Cost)}, more than the budget."
            );
        }

        return FieldSheet.Of(kept);
    }
}
