using Spectre.Console;

namespace PlotAgronomy.Sample;

/// <summary>Where a command reads and writes.</summary>
internal sealed class ConsoleStreams
{
    /// <summary>Standard input where nothing else is given; a command that asks nothing never wakes the keyboard.</summary>
    internal TextReader In
    {
        get => Answers ?? Console.In;
        init => Answers = value;
    }

    private TextReader? Answers { get; init; }

    internal required TextWriter Out { get; init; }

    internal required TextWriter Error { get; init; }

    /// <summary>True when a person sits at the terminal; decides about colour only.</summary>
    internal required bool Interactive { get; init; }

    internal static ConsoleStreams Standard() =>
        new()
        {
            Out = Console.Out,
            Error = Console.Error,
            Interactive = !Console.IsOutputRedirected,
        };

    /// <summary>The same streams, with what would command a terminal left out of what is written.</summary>
    internal ConsoleStreams WithoutControlCharacters() =>
        new()
        {
            Answers = Answers,
            Out = new PlainWriter(Out),
            Error = new PlainWriter(Error),
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
