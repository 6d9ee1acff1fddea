using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Records;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>history PLOT|PLAN</c>: what the plot book tells of a plot, or of all its plots.</summary>
internal static class HistoryCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var about = new Argument<string?>("plot")
        {
            Description = "Name of a plot, or a plan file; every plot of the book when left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var on = new Option<string?>("--on")
        {
            Description = "Day up to which it is told; that of the latest entry when left out.",
        };
        var book = new BookOptions();
        var options = new SheetOptions();
        var command = new Command("history", "Tell from the plot book what was done, what is owed, what grew.") { about };
        command.Options.Add(on);
        book.AddTo(command, writes: false);
        options.AddTo(command);
        command.SetAction(parsed =>
        {
            string? asked = parsed.GetValue(about);
            PlotPlan? plan = null;
            if (File.Exists(asked) && PlanInput.Read(asked, streams, out plan) is var code && plan is null)
            {
                return code;
            }

            string folder = book.FolderFor(parsed, plan is null ? null : asked);
            return book.Open(parsed, folder, writes: false, streams.Error.WriteLine) is { } opened
                ? options.Write(parsed, streams, folder, say => Sheet(opened.Read(), plan, asked, parsed.GetValue(on), say))
                : ExitCode.BadInput;
        });
        return command;
    }

    private static FieldSheet? Sheet(PlotBook book, PlotPlan? plan, string? asked, string? on, Action<string> say)
    {
        if (book.Current.IsEmpty)
        {
            say("the plot book has no entries yet");
            return null;
        }

        var day = book.Current[^1].On;
        if (on is not null && !DateOption.TryRead(on, "--on", say, out day))
        {
            return null;
        }

        try
        {
            PlotHistory[] told = plan is not null
                ? [PlotHistory.Of(book, plan, day)]
                : [.. (asked is null ? book.Plots : [asked]).Select(plot => PlotHistory.Of(book, plot, null, day))];
            return FieldSheet.Of(told);
        }
        catch (ArgumentException refused)
        {
            say(refused.Message.Split(" (Parameter ")[0]);
            return null;
        }
    }
}
