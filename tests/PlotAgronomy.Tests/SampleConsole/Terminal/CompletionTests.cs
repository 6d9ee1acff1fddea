using System.CommandLine;
using PlotAgronomy.Sample;
using PlotAgronomy.Sample.Commands;

namespace PlotAgronomy.Tests.SampleConsole.Terminal;

/// <summary>The Tab key: what the console answers, and what a real shell makes of it.</summary>
public sealed class CompletionTests
{
    private static readonly RootCommand Root = RootCommands.Create(new ConsoleStreams { Out = TextWriter.Null, Error = TextWriter.Null, Interactive = false });

    private static string Completed(params string[] words) => string.Join(' ', new Completer(Root).For(words));

    /// <summary>Read off the commands by eye.</summary>
    [Theory]
    [InlineData("compare completion", "com")]
    [InlineData("bag lime lots plans systems", "compare", "")]
    [InlineData("--format", "plan", "--f")]
    [InlineData("html json markdown text", "plan", "my-plot.json", "--format", "")]
    [InlineData("markdown", "plan", "--format", "=", "m")]
    [InlineData("--format=json", "plan", "--format=j")]
    [InlineData("alfalfa", "compare", "systems", "x.json", "--crop", "alf")]
    [InlineData("catch run", "calibrate", "--way", "")]
    [InlineData("lime.rate", "explain", "lime.ra")]
    [InlineData("America/New_York", "when", "x.json", "--zone", "America/New_Y")]
    [InlineData("bash fish pwsh zsh", "completion", "")]
    [InlineData("", "plan", "")]
    [InlineData("", "explain", "lime.rate", "")]
    [InlineData("", "plan", "--output", "")]
    [InlineData("--help --output --width", "plan", "--work", "--format", "json", "--")]
    public void What_may_stand_there_is_told(string expected, params string[] words) => Assert.Equal(expected, Completed(words));

    [Fact]
    public void Without_a_word_every_command_is_offered() =>
        Assert.Equal(Root.Subcommands.Where(c => !c.Hidden).Select(c => c.Name).Order(StringComparer.Ordinal), Completed("").Split(' '));

    /// <summary>What is offered is accepted: the parser of the command line finds no fault with it.</summary>
    [Fact]
    public void Every_option_that_is_offered_is_an_option_of_the_command()
    {
        foreach (var command in Root.Subcommands.Where(c => !c.Hidden && c.Subcommands.Count == 0))
        {
            string[] offered = Completed(command.Name, "--").Split(' ');
            Assert.Equal(command.Options.Select(o => o.Name).Append("--help").Order(StringComparer.Ordinal), offered);
        }
    }

    [Fact]
    public void A_shell_nobody_knows_is_one_line() => Assert.Equal((1, "", "expected bash, zsh, fish or pwsh, found 'csh'\n"), ConsoleTests.Run("completion", "csh"));

    /// <summary>A real bash reads the script, registers it and fills in what it would show for the Tab key.</summary>
    [Theory, Trait("Category", "Slow")]
    [InlineData("compare completion", "com")]
    [InlineData("bag lime lots plans systems", "compare", "''")]
    [InlineData("html", "plan", "my-plot.json", "--format", "h")]
    [InlineData(@"deer\ and\ turkey\ food\ plot", "compare", "systems", "x.json", "--crop", "deer")]
    [InlineData("", "plan", "my-p")]
    public void Bash_fills_in(string expected, params string[] words)
    {
        using var console = new BuiltConsole();
        var (exit, said) = console.Bash($"""
            source <(plot-agronomy completion bash)
            COMP_WORDS=(plot-agronomy {string.Join(' ', words)})
            COMP_CWORD={words.Length}
            "$(complete -p plot-agronomy | sed -E 's/.*-F ([^ ]+) .*/\1/')"
            echo "$(complete -p plot-agronomy)"
            echo "[$(printf '%s ' "${"{"}COMPREPLY[@]{"}"}")]"
            """);
        Assert.True(exit == 0, said);
        Assert.Equal($"complete -o default -F _plot_agronomy plot-agronomy\n[{expected} ]\n", said);
    }

    /// <summary>The key itself, in a shell that sits at a terminal: the rest of a word and a file's name are filled in.</summary>
    [Fact, Trait("Category", "Slow")]
    public void The_Tab_key_fills_in_a_command_an_option_and_a_file()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/script"), "needs the command script, which makes a terminal");
        using var console = new BuiltConsole();
        console.Lay("my-plot.json", File.ReadAllText(ConsoleTests.Data("fall-blend.json")));
        console.Lay("keys", "source <(plot-agronomy completion bash)\nplot-agronomy che\tmy-p\t > said.txt\nplot-agronomy pl\tmy-p\t--form\tmark\t > sheet.txt\nexit\n");
        var (exit, said) = console.Bash("(while IFS= read -r line; do printf '%s\\n' \"$line\"; sleep 2; done < keys; sleep 2) | script -qec 'bash --norc -i' /dev/null");
        Assert.True(exit == 0, said);
        Assert.Equal("my-plot.json: no mistakes found\n", File.ReadAllText(Path.Combine(console.Folder, "said.txt")));
        Assert.StartsWith("# Fern Bottom", File.ReadAllText(Path.Combine(console.Folder, "sheet.txt")), StringComparison.Ordinal);
    }
}
