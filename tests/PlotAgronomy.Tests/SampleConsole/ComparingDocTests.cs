using System.Text;
using PlotAgronomy.Tests.House;
using PlotAgronomy.Tests.Support;

namespace PlotAgronomy.Tests.SampleConsole;

/// <summary>The outputs on the pages about the sheets are what the commands above them print.</summary>
[Trait("Category", "Generated")]
public class ComparingDocTests
{
    [Theory]
    [InlineData("docs/comparing.md")]
    [InlineData("docs/field-sheet.md")]
    public void The_outputs_on_the_page_are_current(string page) => GeneratedDocsTests.AssertCurrent(page, WithOutputs(File.ReadAllLines(Repository.PathOf(page))));

    /// <summary>The page with each text block rewritten by the command of the block before it; what code writes and the prose stays.</summary>
    private static string WithOutputs(string[] lines)
    {
        var page = new StringBuilder();
        string command = "";
        for (int i = 0; i < lines.Length; i++)
        {
            page.Append(lines[i]).Append('\n');
            if (lines[i].StartsWith("plot-agronomy ", StringComparison.Ordinal))
            {
                command = lines[i];
            }
            else if (lines[i] == "```csharp")
            {
                command = "";
            }
            else if (lines[i] == "```text" && command.Length > 0)
            {
                page.Append(OutputOf(command));
                i = Array.IndexOf(lines, "```", i + 1);
                page.Append("```\n");
            }
        }

        return page.ToString();
    }

    /// <summary>The answer itself; findings and sources, which end every sheet, are left to the reader's own run.</summary>
    private static string OutputOf(string command)
    {
        var (exit, output, error) = ConsoleTests.Run([.. command.Split(' ').Skip(1).Select(w => w.EndsWith(".json", StringComparison.Ordinal) ? Repository.PathOf(w) : w)]);
        Assert.Equal((0, ""), (exit, error));
        int end = output.IndexOf("\nFindings, most serious first", StringComparison.Ordinal);
        return end < 0 ? output : output[..end];
    }
}
