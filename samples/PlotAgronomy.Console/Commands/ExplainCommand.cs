using System.CommandLine;
using System.CommandLine.Completions;
using PlotAgronomy.Sample.Output;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>explain CODE</c>: formula, numbers, source and status of one number on the sheet.</summary>
internal static class ExplainCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var code = new Argument<string>("code")
        {
            Description = "Code on the sheet, such as lime.rate.",
            HelpName = "code",
        };
        var file = new Argument<string?>("file")
        {
            Description = "Plan file; the demo when left out.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var command = new Command("explain", "Explain one number on the sheet by its code.") { code, file };
        code.CompletionSources.Add(_ => Codes().Select(known => new CompletionItem(known)));
        var width = new WidthOption();
        width.AddTo(command);
        command.SetAction(parsed =>
        {
            if (!width.TryRead(parsed, streams, out int? columns))
            {
                return ExitCode.Usage;
            }

            int read = PlanInput.Read(parsed.GetValue(file), streams, out var plan);
            return plan is null ? read : Explain(FieldSheet.Of(plan.Solve()), parsed.GetValue(code)!, columns, streams);
        });
        return command;
    }

    /// <summary>The file is named behind the code: the codes of the demo stand for those of any plan.</summary>
    private static IEnumerable<string> Codes() =>
        PlanFile.Read(File.ReadAllText(PlanInput.DemoFile)).Plan is { } demo
            ? FieldSheet.Of(demo.Solve()).Figures.Select(figure => figure.Code)
            : [];

    private static int Explain(FieldSheet sheet, string code, int? width, ConsoleStreams streams)
    {
        if (sheet.Find(code) is not { } figure)
        {
            streams.Error.WriteLine(
                $"no number on the sheet has the code '{code}'; codes: {string.Join(" ", sheet.Figures.Select(f => f.Code))}"
            );
            return ExitCode.BadInput;
        }

        streams.Out.Write(Explanation.Render(figure, width));
        return ExitCode.Done;
    }
}
