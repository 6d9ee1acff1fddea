namespace PlotAgronomy.Sample.Commands;

/// <summary>Reads several plans, or says on stderr which of them cannot be read.</summary>
internal static class PlansInput
{
    internal static PlotPlan[]? Read(string[] files, ConsoleStreams streams)
    {
        var plans = new List<PlotPlan>();
        foreach (string file in files)
        {
            PlanInput.Read(file, streams, out var plan);
            if (plan is not null)
            {
                plans.Add(plan);
            }
        }

        return plans.Count == files.Length ? [.. plans] : null;
    }

    /// <summary>The sheet, or null with a line that says why these plans make none.</summary>
    internal static FieldSheet? Made(Func<FieldSheet> make, Action<string> say)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            say(refused.Message.Split(" (Parameter ")[0]);
            return null;
        }
    }
}
