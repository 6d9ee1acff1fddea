using PlotAgronomy.Reference;

namespace PlotAgronomy.FieldQuestions;

/// <summary>How an answer is told: the sum line by line, then what to be careful about.</summary>
internal static class Telling
{
    internal static void Tell(this TextWriter output, IWorkedResult result)
    {
        foreach (var line in result.ShowWork())
        {
            output.WriteLine(line);
        }

        foreach (var finding in result.Findings)
        {
            output.WriteLine(finding);
        }
    }
}
