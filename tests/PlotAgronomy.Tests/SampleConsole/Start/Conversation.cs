using PlotAgronomy.Sample;

namespace PlotAgronomy.Tests.SampleConsole.Start;

/// <summary>An owner who knows the answers to some questions, each once, and nothing else.</summary>
internal sealed class Conversation((string Question, string Answer)[] known, StringWriter asked) : TextReader
{
    private readonly HashSet<string> told = [];

    /// <returns>All that was printed.</returns>
    internal static string With(StartedPlan started, params (string Question, string Answer)[] known)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter();
        using var owner = new Conversation(known, output);
        int exit = Program.Run(["start", started.File], new ConsoleStreams { In = owner, Out = output, Error = error, Interactive = false });
        Assert.Equal((0, ""), (exit, error.ToString()));
        Assert.Equal(known.Select(k => k.Question).Order(), owner.told.Order());
        return output.ToString().ReplaceLineEndings("\n");
    }

    public override string? ReadLine()
    {
        string question = asked.ToString().ReplaceLineEndings("\n").Split('\n').Last(l => l.Length > 0 && l[0] != ' ');
        var (part, answer) = known.FirstOrDefault(k => question.Contains(k.Question, StringComparison.Ordinal) && !told.Contains(k.Question));
        if (part is null)
        {
            return "";
        }

        told.Add(part);
        return answer;
    }
}
