using PlotAgronomy.Sample;

namespace PlotAgronomy.Tests.SampleConsole.Start;

/// <summary>One plan file that <c>start</c> fills in, in a folder of its own.</summary>
internal sealed class StartedPlan : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("start-").FullName;

    internal string File => Path.Combine(folder, "my-plot.json");

    internal string Text => System.IO.File.ReadAllText(File);

    internal PlotPlan Plan => Assert.IsType<PlotPlan>(PlanFile.Read(Text).Plan);

    /// <summary>Answers of an owner who has paces, a report of ppm without a buffer, six lots, two limes, four fertilizers and
    /// one weighed run; an answer a line.</summary>
    internal static string[] PacedCorner => [.. System.IO.File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "SampleConsole/Start/paced-corner.answers.txt"))];

    internal (int Exit, string Out, string Error) Start(params IEnumerable<string> answers) => Run(string.Concat(answers.Select(a => $"{a}\n")), "start", File);

    internal (int Exit, string Out, string Error) Solve() => Run("", "plan", File, "--width", "96");

    internal static (int Exit, string Out, string Error) Run(string answers, params string[] args)
    {
        using var input = new StringReader(answers);
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        int exit = Program.Run(args, new ConsoleStreams { In = input, Out = output, Error = error, Interactive = false });
        return (exit, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }

    internal void GoBackTo(string draft) => System.IO.File.WriteAllText(File, draft);

    internal void Forget() => System.IO.File.Delete(File);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
