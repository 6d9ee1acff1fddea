namespace PlotAgronomy.PlanFiles;

/// <summary>What of a plan a plan file cannot say.</summary>
internal sealed class PlanRefusals
{
    private readonly List<string> all = [];

    internal void Add(string path, string text) => all.Add($"{path}: {text}");

    /// <exception cref="ArgumentException">There are any.</exception>
    internal void ThrowIfAny(string argument)
    {
        if (all.Count > 0)
        {
            throw new ArgumentException($"A plan file cannot say this plan: {string.Join("; ", all)}", argument);
        }
    }
}
