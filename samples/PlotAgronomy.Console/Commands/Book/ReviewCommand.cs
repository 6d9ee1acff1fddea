using System.CommandLine;
using System.Globalization;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>review YEAR --plan NEXT.json</c>: next year's plan file, every change with its reason.</summary>
internal static class ReviewCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var year = new Argument<string>("year") { Description = "The year that is reviewed, such as 2026." };
        var last = new Option<string?>("--from")
        {
            Description = "That year's plan file; the only one beside the new one when left out.",
        };
        var next = new Option<string?>("--plan") { Description = "File that next year's plan is written to." };
        var all = new Option<bool>("--all") { Description = "Make every change without asking." };
        var book = new BookOptions();
        var command = new Command("review", "Write next year's plan from this year's and the plot book.") { year };
        foreach (var option in new Option[] { last, next, all })
        {
            command.Options.Add(option);
        }

        book.AddTo(command, writes: false);
        command.SetAction(parsed =>
        {
            Action<string> say = streams.Error.WriteLine;
            if (
                !int.TryParse(parsed.GetValue(year), NumberStyles.None, CultureInfo.InvariantCulture, out int reviewed)
                || reviewed is < 1900 or > 9998
            )
            {
                say($"expected a year such as 2026, found '{parsed.GetValue(year)}'");
                return ExitCode.BadInput;
            }

            if (parsed.GetValue(next) is not { } target)
            {
                say("name the file for next year's plan: --plan NEXT.json");
                return ExitCode.Usage;
            }

            if ((parsed.GetValue(last) ?? OnlyBeside(target, say)) is not { } source)
            {
                return ExitCode.BadInput;
            }

            int code = PlanInput.Read(source, streams, out var plan);
            if (plan is null)
            {
                return code;
            }

            if (
                (
                    File.Exists(target)
                        ? "it is there already, and a plan is not written over"
                        : OutputFile.WhyNot(target, source)
                ) is
                { } why
            )
            {
                say($"cannot write '{target}': {why}");
                return ExitCode.Usage;
            }

            return book.Open(parsed, book.FolderFor(parsed, source), writes: false, say) is { } opened
                ? new PlanReviewer(streams, parsed.GetValue(all)).Review(plan, opened.Read(), reviewed, source, target)
                : ExitCode.BadInput;
        });
        return command;
    }

    /// <summary>The only plan file in the folder; several or none are told.</summary>
    private static string? OnlyBeside(string target, Action<string> say)
    {
        string folder = Path.GetDirectoryName(Path.GetFullPath(target)) ?? ".";
        string[] plans = Directory.Exists(folder) ? Directory.GetFiles(folder, "*.json") : [];
        if (plans is [var only])
        {
            return only;
        }

        say($"name that year's plan: --from FILE ({plans.Length} files ending in .json lie in '{folder}')");
        return null;
    }
}
