using System.CommandLine;
using PlotAgronomy.Calendar;
using PlotAgronomy.Planning;
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
            Description = "Date the calendar file is stamped with; when left out the planting date, else the first day in it.",
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
        if (SeasonFile.FirstDay(answers) is not { } day)
        {
            say("no task of this season has a day yet, so no calendar was written: put the planting date into the plan");
            return false;
        }

        if (stamp is not null && !DateOption.TryRead(stamp, "--stamp", say, out day))
        {
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
            SayWhatIsLeftOut(answers, say);
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            say($"cannot write '{target}': {error.Message}");
            return false;
        }
    }

    private static void SayWhatIsLeftOut(PlotAnswers answers, Action<string> say)
    {
        string[] left = [.. SeasonFile.WithoutDay(answers).Select(w => Short(w.Task))];
        if (left.Length > 0)
        {
            string mend = answers.Plan.PlantingDate is null ? " - put the planting date into the plan" : "";
            say($"not in the calendar file, for they have no day yet: {string.Join("; ", left)}{mend}");
        }
    }

    /// <summary>The first words of a task and what its day hangs on: <c>Till the last time (in the last week before
    /// sowing)</c>.</summary>
    private static string Short(SeasonTask task)
    {
        string first = task.Title.Split([',', ';', ':', '.', '('], 2)[0].Trim();
        return task.When.Length > 0 ? $"{first} ({task.When})" : first;
    }
}
