using System.CommandLine;
using System.Globalization;
using PlotAgronomy.Sample.Output;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>calendar PLAN</c>: the season of a plan as a dated list, and as a calendar file.</summary>
internal static class CalendarCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var file = new Argument<string?>("plan")
        {
            Description = "Plan file; the demo when left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var calendar = new Option<string?>("--ics") { Description = "Write the tasks to this file as iCalendar (RFC 5545)." };
        var stamp = new Option<string?>("--stamp")
        {
            Description = "Date the calendar file is stamped with; the planting date when left out.",
        };
        var options = new SheetOptions();
        var command = new Command("calendar", "Lay out the season of a plan: every task with its dates and reasons.") { file };
        command.Options.Add(calendar);
        command.Options.Add(stamp);
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            string? input = parsed.GetValue(file);
            return options.Run(parsed, input, streams, (plan, say) =>
            {
                var answers = plan.Solve();
                bool isWritten =
                    parsed.GetValue(calendar) is not { } target
                    || TryWrite(answers, target, parsed.GetValue(stamp), input ?? PlanInput.DemoFile, say);
                return isWritten ? FieldSheet.OfSeason(answers) : null;
            });
        });
        return command;
    }

    private static bool TryWrite(PlotAnswers answers, string target, string? stamp, string input, Action<string> say)
    {
        if (answers.Plan.PlantingDate is not { } day)
        {
            say("the plan names no planting date, so its season has no days");
            return false;
        }

        if (
            stamp is not null
            && !DateOnly.TryParseExact(stamp, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day)
        )
        {
            say($"--stamp: expected a date such as 2026-09-12, found '{stamp}'");
            return false;
        }

        if (OutputFile.WhyNot(target, input) is { } why)
        {
            say($"cannot write '{target}': {why}");
            return false;
        }

        try
        {
            OutputFile.Replace(target, SeasonFile.Of(answers, day));
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            say($"cannot write '{target}': {error.Message}");
            return false;
        }
    }
}
