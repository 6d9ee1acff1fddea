namespace PlotAgronomy.Tests.SampleConsole.Terminal;

/// <summary>What a terminal, a pipe or a printer gets: lines that fit, and text alone.</summary>
public sealed class TerminalTests
{
    private const char Escape = '\u001b';

    private static readonly string[][] Sheets =
    [
        ["plan", "fall-blend.json"],
        ["plan", "frost-seeding.json"],
        ["plan", "fall-blend.json", "--work"],
        ["plan", "frost-seeding.json", "--work"],
        ["compare", "systems", "fall-blend.json"],
        ["compare", "systems", "frost-seeding.json"],
        ["compare", "lime", "fall-blend.json"],
        ["compare", "lime", "frost-seeding.json"],
        ["compare", "lots", "clover-lots.json"],
        ["compare", "bag", "store-blend.json"],
        ["compare", "plans", "fall-blend.json", "frost-seeding.json"],
        ["calendar", "fall-blend.json"],
        ["property", "fall-blend.json", "frost-seeding.json"],
        ["explain", "lime.rate", "fall-blend.json"],
    ];

    public static TheoryData<string, int> Widths
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (string[] sheet in Sheets)
            {
                foreach (int width in new[] { 60, 80, 100, 140, 200 })
                {
                    data.Add(string.Join(' ', sheet), width);
                }
            }

            return data;
        }
    }

    /// <summary>Only a word that is longer than a line may reach beyond it.</summary>
    [Theory, MemberData(nameof(Widths))]
    public void No_line_is_longer_than_asked(string command, int width)
    {
        string said = Said(command, "--width", $"{width}");
        Assert.All(said.Split('\n'), line => Assert.True(line.Length <= width || !line.Trim().Contains(' ', StringComparison.Ordinal), line));
        Assert.Contains(said.Split('\n'), line => line.Length > width / 2);
    }

    /// <summary>Colour carries nothing here: neither a pipe nor a terminal gets any, whatever it is called.</summary>
    [Fact, Trait("Category", "Slow")]
    public void No_command_to_the_terminal_is_written_to_a_pipe_or_a_terminal()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/script"), "needs the command script, which makes a terminal");
        using var console = new BuiltConsole();
        foreach (string setting in new[] { "NO_COLOR=1", "CLICOLOR_FORCE=1 FORCE_COLOR=1", "TERM=xterm-256color COLORTERM=truecolor" })
        {
            var (_, piped) = console.Bash($"{setting} plot-agronomy plan 2>&1 | cat; {setting} plot-agronomy dance 2>&1 | cat");
            Assert.DoesNotContain(Escape, piped);
            Assert.Contains("Fern Bottom", piped, StringComparison.Ordinal);
        }

        var (exit, seen) = console.Bash("""TERM=xterm-256color NO_COLOR=1 script -qec 'plot-agronomy plan; plot-agronomy plan --help; plot-agronomy dance' /dev/null < /dev/null""");
        Assert.True(exit is 0 or 1, seen);
        Assert.Contains("Fern Bottom", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[3", seen, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b[9", seen, StringComparison.Ordinal);
    }

    [Fact]
    public void The_writing_of_a_sheet_holds_no_command_to_the_terminal() =>
        Assert.All(Sheets, sheet => Assert.DoesNotContain(Escape, Said(string.Join(' ', sheet))));

    private static string Said(string command, params string[] more)
    {
        string[] words = [.. command.Split(' ').Select(w => w.EndsWith(".json", StringComparison.Ordinal) ? ConsoleTests.Data(w) : w), .. more];
        var (exit, said, error) = ConsoleTests.Run(words);
        Assert.True(exit == 0, error);
        return said;
    }
}
