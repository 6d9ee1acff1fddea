using System.CommandLine;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>explain CODE</c>: formula, inputs, source and status of one number on the sheet.</summary>
internal static class ExplainCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var code = new Argument<string>("code") { Description = "Short code on the sheet, such as L1." };
        var file = new Argument<string?>("file")
        {
            Description = "Plan file; the demo when left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("explain", "Explain one number on the sheet by its short code.") { code, file };
        command.SetAction(parsed =>
        {
            int read = PlanInput.Read(parsed.GetValue(file), streams, out var plan);
            return plan is null ? read : Explain(SheetBuilder.Build(plan), parsed.GetValue(code)!, streams);
        });
        return command;
    }

    private static int Explain(FieldSheet sheet, string code, ConsoleStreams streams)
    {
        if (sheet.Find(code) is not { } figure)
        {
            streams.Error.WriteLine(
                $"no number on the sheet has the code '{code}'; codes: {string.Join(" ", sheet.Figures.Select(f => f.Code))}"
            );
            return ExitCode.BadInput;
        }

        streams.Out.WriteLine($"{figure.Code}  {figure.Label}: {figure.Value}");
        foreach (var line in figure.ShowWork())
        {
            streams.Out.WriteLine();
            streams.Out.WriteLine($"{line.Label}");
            streams.Out.WriteLine($"  formula  {line.Formula}");
            streams.Out.WriteLine($"  numbers  {line.Numbers}");
            streams.Out.WriteLine($"  source   {SourceOf(line)}");
        }

        streams.Out.WriteLine();
        streams.Out.WriteLine($"status   {Words(figure.Status)}");
        foreach (string remark in figure.Unchecked)
        {
            streams.Out.WriteLine($"         {remark}");
        }

        return ExitCode.Done;
    }

    private static string SourceOf(WorkedLine line) =>
        line.SourceId is { } ids
            ? string.Join("; ", ids.Split(';').Select(id => SourceCatalog.Find(id).ToString()))
            : "arithmetic";

    private static string Words(DataStatus status) =>
        status switch
        {
            DataStatus.Read => "read in the publications named",
            DataStatus.Memory => "not yet checked against the publication; compare with the printed table",
            _ => "common practice, without an institution's publication",
        };
}
