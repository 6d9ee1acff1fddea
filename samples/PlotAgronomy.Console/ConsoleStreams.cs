using Spectre.Console;

namespace PlotAgronomy.Sample;

/// <summary>Where a command reads and writes.</summary>
internal sealed class ConsoleStreams
{
    /// <summary>Standard input where nothing else is given; a command that asks nothing never wakes the keyboard.</summary>
    internal TextReader In
    {
        get
        {
            BeforeUse();
            return Answers ?? Console.In;
        }
        init => Answers = value;
    }

    private TextReader? Answers { get; init; }

    private Action BeforeUse { get; init; } = () => { };

    internal required TextWriter Out { get; init; }

    internal required TextWriter Error { get; init; }

    /// <summary>True when a person sees what is written to <see cref="Error"/>; decides about progress only.</summary>
    internal required bool Interactive { get; init; }

    internal static ConsoleStreams Standard() =>
        new()
        {
            Out = Console.Out,
            Error = Console.Error,
            Interactive = !Console.IsErrorRedirected,
        };

    /// <summary>The same streams, with what would command a terminal left out of what is written.</summary>
    /// <param name="beforeUse">Called before anything is written or asked.</param>
    internal ConsoleStreams WithoutControlCharacters(Action beforeUse) =>
        new()
        {
            Answers = Answers,
            BeforeUse = beforeUse,
            Out = new PlainWriter(Out, beforeUse),
            Error = new PlainWriter(Error, beforeUse),
            Interactive = Interactive,
        };

    /// <summary>A console of the layout library over a writer, without colour, of a fixed width when one is given.</summary>
    internal static IAnsiConsole Layout(TextWriter writer, int? width)
    {
        var console = AnsiConsole.Create(
            new AnsiConsoleSettings
            {
                Ansi = AnsiSupport.No,
                ColorSystem = ColorSystemSupport.NoColors,
                Interactive = InteractionSupport.No,
                Out = new AnsiConsoleOutput(writer),
            }
        );
        console.Profile.Width = width ?? 100;
        return console;
    }
}
