using System.CommandLine;
using System.CommandLine.Completions;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>when PLAN</c>: sow now or wait, by a forecast in a file or typed line by line.</summary>
internal static class WhenCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string>("plan") { Description = "Plan file." };
        var forecast = new Option<string?>("--forecast")
        {
            Description = "Forecast: a grid or forecast document of the weather service, or a table. Left out, it is asked.",
        };
        var observed = new Option<string?>("--observed") { Description = "Observed days: a table, or a station's file." };
        var zone = new Option<string?>("--zone")
        {
            Description = "Time zone of the plot, such as America/New_York.",
            HelpName = "zone",
        };
        zone.CompletionSources.Add(_ => TimeZoneInfo.GetSystemTimeZones().Select(z => new CompletionItem(z.Id)));
        var from = new Option<string?>("--from") { Description = "First day that is typed; the planting date when left out." };
        var options = new SheetOptions();
        var command = new Command("when", "Sow now or wait: weigh the days of a forecast for a plan.") { file };
        foreach (var option in new[] { forecast, observed, zone, from })
        {
            command.Options.Add(option);
        }

        options.AddTo(command);
        command.SetAction(parsed =>
        {
            var asked = new WeatherInput(
                parsed.GetValue(forecast),
                parsed.GetValue(observed),
                parsed.GetValue(zone),
                parsed.GetValue(from)
            );
            return options.Run(parsed, parsed.GetValue(file), streams, (plan, say) => Sheet(plan, asked, streams, say));
        });
        return command;
    }

    private static FieldSheet? Sheet(PlotPlan plan, WeatherInput asked, ConsoleStreams streams, Action<string> say)
    {
        if (!asked.TryRead(plan, streams, say, out var weather))
        {
            return null;
        }

        var answer = weather.Plan.When(weather.Forecast, weather.Zone, weather.Observed);
        if (answer.TryGet(out var decision))
        {
            return FieldSheet.Of(weather.Plan, decision);
        }

        foreach (var question in answer.Questions)
        {
            say($"cannot tell yet: {question.Text} [{question.Code}]");
        }

        return null;
    }
}
