using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>complete -- WORDS</c>: what may stand in place of the last word, one a line. The scripts of the shells ask
/// it.</summary>
internal static class CompleteCommand
{
    internal static Command Create(ConsoleStreams streams, RootCommand root)
    {
        var words = new Argument<string[]>("words") { Arity = ArgumentArity.ZeroOrMore };
        var command = new Command("complete", "Tell what may stand in place of the last word.") { words };
        command.Hidden = true;
        command.SetAction(parsed =>
        {
            foreach (string word in new Completer(root).For(parsed.GetValue(words) ?? []))
            {
                streams.Out.WriteLine(word);
            }

            return ExitCode.Done;
        });
        return command;
    }
}
