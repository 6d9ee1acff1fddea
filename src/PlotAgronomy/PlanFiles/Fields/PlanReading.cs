namespace PlotAgronomy.PlanFiles;

/// <summary>One reading of a plan file: what it may open, and how it took what may be typed in more than one way.</summary>
/// <param name="open">Gives the text of a file that the plan names, or null; null where no file is opened.</param>
internal sealed class PlanReading(Func<string, string?>? open = null)
{
    internal Func<string, string?>? Open => open;

    internal List<PlanProblem> Taken { get; } = [];
}
