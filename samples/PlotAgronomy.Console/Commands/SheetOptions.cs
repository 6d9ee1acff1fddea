using System.CommandLine;
using System.Globalization;
using PlotAgronomy.Planning;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The options of every command that prints a sheet.</summary>
internal sealed class SheetOptions
{
    private readonly Option<SheetFormat> format = new("--format") { Description = "text, markdown or json." };
    private readonly Option<bool> work = new("--work") { Description = "Show all working." };
    private readonly Option<string?> output = new("--output") { Description = "Write to this file instead of the screen." };
    private readonly Option<int?> width = new("--width") { Description = "Characters a line of text may have (60 to 200)." };

    internal void AddTo(Command command)
    {
        command.Options.Add(format);
        command.Options.Add(work);
        command.Options.Add(output);
        command.Options.Add(width);
    }

    /// <summary>Reads the plan, has a sheet made of it and writes the sheet as asked.</summary>
    /// <param name="parsed">Command line.</param>
    /// <param name="file">Plan file.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="make">Makes the sheet; or says in one line why the plan or the options do not allow it, and returns
    /// null.</param>
    internal int Run(ParseResult parsed, string? file, ConsoleStreams streams, Func<PlotPlan, Action<string>, FieldSheet?> make)
    {
        int? columns = parsed.GetValue(width);
        if (columns is < 60 or > 200)
        {
            streams.Error.WriteLine(
                $"--width must be from 60 to 200, found {columns.Value.ToString(CultureInfo.InvariantCulture)}"
            );
            return ExitCode.Usage;
        }

        int code = PlanInput.Read(file, streams, out var plan);
        return plan is null ? code
            : make(plan, streams.Error.WriteLine) is { } sheet
                ? SheetOutput.Write(
                    sheet,
                    parsed.GetValue(format),
                    parsed.GetValue(work),
                    columns,
                    parsed.GetValue(output),
                    streams
                )
            : ExitCode.BadInput;
    }
}
