namespace PlotAgronomy.Nutrients;

/// <summary>The ideas behind the systems, in words.</summary>
internal static class PhilosophyWords
{
    internal static string For(SystemPhilosophy philosophy) =>
        philosophy switch
        {
            SystemPhilosophy.Sufficiency => "sufficiency (feed this year's crop, leave the soil as it is)",
            SystemPhilosophy.BuildUpAndMaintenance =>
                "build-up and maintenance (raise the soil first, then put back what is carried off)",
            SystemPhilosophy.YieldGoal => "a yield goal (pounds for every unit of yield hoped for)",
            SystemPhilosophy.CriticalLevel => "a critical level (yes or no, without a rate)",
            _ => "a legal ceiling (no more than this)",
        };
}
