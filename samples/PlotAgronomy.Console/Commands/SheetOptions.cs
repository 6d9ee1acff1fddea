using System.CommandLine;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The options of every command that prints a sheet.</summary>
internal sealed class SheetOptions
{
    private readonly Option<string?> format = new("--format") { Description = "text, markdown, html or json." };
    private readonly Option<bool> work = new("--work") { Description = "Show all working." };
    private readonly Option<string?> output = new("--output") { Description = "Write to this file instead of the screen." };
    private readonly WidthOption width = new();

    internal void AddTo(Command command)
    {
        command.Options.Add(format);
        command.Options.Add(work);
        command.Options.Add(output);
        width.AddTo(command);
    }

    /// <summary>Reads the plan, has a sheet made of it and writes the sheet as asked.</summary>
    /// <param name="parsed">Command line.</param>
    /// <param name="file">Plan file.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="make">Makes the sheet; or says in one line why the plan or the options do not allow it, and returns
    /// null.</param>
    internal int Run(ParseResult parsed, string? file, ConsoleStreams streams, Func<PlotPlan, Action<string>, FieldSheet?> make)
    {
        if (!width.TryRead(parsed, streams, out int? columns))
        {
            return ExitCode.Usage;
        }

        if (!TryReadFormat(parsed.GetValue(format), streams, out var form))
        {
            return ExitCode.Usage;
        }

        int code = PlanInput.Read(file, streams, out var plan);
        return plan is null ? code
            : make(plan, streams.Error.WriteLine) is { } sheet
                ? SheetOutput.Write(
                    sheet,
                    form,
                    parsed.GetValue(work),
                    columns,
                    parsed.GetValue(output),
                    file ?? PlanInput.DemoFile,
                    streams
                )
            : ExitCode.BadInput;
    }

    private static bool TryReadFormat(string? word, ConsoleStreams streams, out SheetFormat form)
    {
        form = SheetFormat.Text;
        foreach (var known in Enum.GetValues<SheetFormat>())
        {
            if (known.ToString().Equals(word ?? nameof(SheetFormat.Text), StringComparison.OrdinalIgnoreCase))
            {
                form = known;
                return true;
            }
        }

        streams.Error.WriteLine($"--format: expected text, markdown, html or json, found '{word}'");
        return false;
    }
}
