using System.CommandLine;
using System.CommandLine.Completions;

namespace PlotAgronomy.Sample.Commands;

/// <summary>Commands, options and their words, as the command line itself declares them.</summary>
internal sealed class Completer(RootCommand root)
{
    /// <summary>A shell that parts words at this sign hands it over as one.</summary>
    private const string Sign = "=";

    /// <summary>What may stand in place of the last of the words; nothing where a file or an amount belongs.</summary>
    internal IEnumerable<string> For(IReadOnlyList<string> typed)
    {
        string[] words = [.. typed.Where(w => w != Sign).Select(w => w.Trim('"', '\''))];
        string last = typed.Count == 0 || typed[^1] == Sign ? "" : words[^1];
        string[] before = typed.Count == 0 || typed[^1] == Sign ? words : words[..^1];
        var context = root.Parse(before).GetCompletionContext();
        var command = Called(before);
        return Candidates(command, before, last, context)
            .Where(word => word.StartsWith(last, StringComparison.OrdinalIgnoreCase))
            .Order(StringComparer.Ordinal);
    }

    private static IEnumerable<string> Candidates(Command command, string[] before, string last, CompletionContext context)
    {
        var options = command.Options.Where(o => !o.Hidden).Concat(HelpOf(command)).ToList();
        if (last.Split(Sign, 2) is [var name, _] && options.FirstOrDefault(o => o.Name == name) is { } joined)
        {
            return WordsOf(joined, context).Select(word => $"{name}{Sign}{word}");
        }

        if (before.Length > 0 && options.FirstOrDefault(o => o.Name == before[^1] && o.ValueType != typeof(bool)) is { } asked)
        {
            return WordsOf(asked, context);
        }

        return last.StartsWith('-') ? options.Select(o => o.Name).Except(before)
            : command.Subcommands.Count > 0 ? command.Subcommands.Where(c => !c.Hidden).Select(c => c.Name)
            : FreePlace(command, before) is { } argument ? WordsOf(argument, context)
            : [];
    }

    /// <summary>The command that the words call.</summary>
    private Command Called(string[] before)
    {
        Command called = root;
        foreach (string word in before)
        {
            called = called.Subcommands.FirstOrDefault(c => c.Name == word) ?? called;
        }

        return called;
    }

    /// <summary>The argument whose place the next word takes; a word behind an option with a value takes none.</summary>
    private static Argument? FreePlace(Command command, string[] before)
    {
        int at = Array.LastIndexOf(before, command.Name) + 1;
        int taken = 0;
        for (; at < before.Length; at++)
        {
            if (command.Options.FirstOrDefault(o => o.Name == before[at]) is { } option)
            {
                at += option.ValueType == typeof(bool) ? 0 : 1;
            }
            else
            {
                taken++;
            }
        }

        return command.Arguments.ElementAtOrDefault(taken);
    }

    private static IEnumerable<Option> HelpOf(Command command) =>
        command is RootCommand ? [] : command.Parents.OfType<Command>().SelectMany(Recursive);

    private static IEnumerable<Option> Recursive(Command command) =>
        command.Options.Where(o => o.Recursive).Concat(command.Parents.OfType<Command>().SelectMany(Recursive));

    private static IEnumerable<string> WordsOf(Symbol symbol, CompletionContext context) =>
        symbol.GetCompletions(context).Select(c => c.InsertText ?? c.Label);
}
