using System.CommandLine;

namespace PlotAgronomy.Sample.Commands;

/// <summary><c>completion SHELL</c>: what a shell reads so that its Tab key knows the commands.</summary>
internal static class CompletionCommand
{
    internal static Command Create(ConsoleStreams streams)
    {
        var shell = new Argument<string>("shell") { Description = "bash, zsh, fish or pwsh." };
        shell.CompletionSources.Add([.. CompletionScript.OfShells.Keys]);
        var command = new Command("completion", "Print a script that lets the Tab key of a shell fill in words.") { shell };
        command.SetAction(parsed =>
        {
            string asked = parsed.GetValue(shell)!;
            if (!CompletionScript.OfShells.TryGetValue(asked, out string? script))
            {
                streams.Error.WriteLine($"expected bash, zsh, fish or pwsh, found '{asked}'");
                return ExitCode.Usage;
            }

            streams.Out.Write(script);
            return ExitCode.Done;
        });
        return command;
    }
}
