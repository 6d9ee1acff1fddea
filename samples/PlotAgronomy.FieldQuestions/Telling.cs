using System.Globalization;
using PlotAgronomy.Reference;

namespace PlotAgronomy.FieldQuestions;

/// <summary>How an answer is told: the sum line by line, then what to be careful about.</summary>
internal static class Telling
{
    internal static void Tell(this TextWriter output, IWorkedResult result)
    {
        output.Tell(result.ShowWork());
        output.Warn(result.Findings);
    }

    internal static void Tell(this TextWriter output, IEnumerable<WorkedLine> sum)
    {
        foreach (var line in sum)
        {
            output.WriteLine(line);
        }
    }

    internal static void Warn(this TextWriter output, IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            output.WriteLine(finding);
        }
    }

    internal static string Aloud(this DateOnly day) => day.ToString("d MMMM", CultureInfo.InvariantCulture);
}
