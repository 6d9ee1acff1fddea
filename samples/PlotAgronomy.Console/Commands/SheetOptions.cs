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
        format.CompletionSources.Add([.. Enum.GetNames<SheetFormat>().Select(word => word.ToLowerInvariant())]);
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
        int code = ExitCode.Done;
        PlotPlan? plan = null;
        return Write(
            parsed,
            streams,
            file ?? PlanInput.DemoFile,
            say => (code = PlanInput.Read(file, streams, out plan)) == ExitCode.Done ? make(plan!, say) : null,
            () => code
        );
    }

    /// <summary>Writes a sheet as asked, whatever it is made of.</summary>
    /// <param name="parsed">Command line.</param>
    /// <param name="streams">Where to write.</param>
    /// <param name="input">What is read, and never written over.</param>
    /// <param name="make">Makes the sheet; or says in one line why not, and returns null.</param>
    /// <param name="refused">Exit code where the input was refused before; null takes that of bad input.</param>
    internal int Write(
        ParseResult parsed,
        ConsoleStreams streams,
        string input,
        Func<Action<string>, FieldSheet?> make,
        Func<int>? refused = null
    )
    {
        if (!width.TryRead(parsed, streams, out int? columns))
        {
            return ExitCode.Usage;
        }

        if (!TryReadFormat(parsed.GetValue(format), streams, out var form))
        {
            return ExitCode.Usage;
        }

        return make(streams.Error.WriteLine) is { } sheet
                ? SheetOutput.Write(sheet, form, parsed.GetValue(work), columns, parsed.GetValue(output), input, streams)
            : refused?.Invoke() is { } code and not ExitCode.Done ? code
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
