using System.CommandLine;
using PlotAgronomy.Sample;
using PlotAgronomy.Sample.Commands;

namespace PlotAgronomy.Tests.SampleConsole.Terminal;

/// <summary>Help teaches: every command shows one line to type, and the line works.</summary>
public sealed class HelpTests : IDisposable
{
    private readonly BuiltConsole console = new();

    public void Dispose() => console.Dispose();

    private static readonly RootCommand Root = RootCommands.Create(new ConsoleStreams { Out = TextWriter.Null, Error = TextWriter.Null, Interactive = false });

    private static IEnumerable<Command> All(Command command) => command.Subcommands.Where(c => !c.Hidden).SelectMany(All).Prepend(command);

    public static TheoryData<string> Commands => [.. All(Root).Select(Example.PathOf)];

    private static Command Find(string path) => All(Root).Single(c => Example.PathOf(c) == path);

    [Theory, MemberData(nameof(Commands))]
    public void Help_ends_with_an_example_of_the_command(string path)
    {
        var example = Example.Of(Find(path));
        var (exit, help, error) = ConsoleTests.Run([.. path.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);
        Assert.Equal((0, ""), (exit, error));
        Assert.EndsWith($"Example:\n  plot-agronomy {example.Line}\n  {example.Gives}\n", help, StringComparison.Ordinal);
        Assert.StartsWith(path, example.Line, StringComparison.Ordinal);
        Assert.EndsWith(".", example.Gives, StringComparison.Ordinal);
    }

    /// <summary>Typed into a real shell, in a folder that holds the files it names; what asks gets no answer.</summary>
    [Theory, MemberData(nameof(Commands)), Trait("Category", "Slow")]
    public void The_example_does_what_it_says(string path)
    {
        string plan = PlansOf.GetValueOrDefault(path, "fall-blend.json");
        if (path != "start")
        {
            console.Lay("my-plot.json", File.ReadAllText(ConsoleTests.Data(plan)));
        }


        console.Lay("other-plot.json", File.ReadAllText(ConsoleTests.Data("frost-seeding.json")).Replace("Fern Bottom", "Mill Corner", StringComparison.Ordinal));
        console.Lay("grid.json", File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Weather/grid.json")));
        string first = path is "history" or "review" ? $"plot-agronomy {Example.Of(Find("record")).Line}\n" : "";
        var (exit, said) = console.Bash($"set -e\n{first}plot-agronomy {Example.Of(Find(path)).Line} < /dev/null");
        Assert.True(exit == 0, said);
    }

    private static readonly Dictionary<string, string> PlansOf = new() { ["compare lots"] = "clover-lots.json", ["compare bag"] = "store-blend.json", ["use-up"] = "paced-corner.json" };
}
