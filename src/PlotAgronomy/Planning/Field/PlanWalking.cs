using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>The walks over the plot of a plan that was solved.</summary>
public static class PlanWalking
{
    extension(PlotAnswers answers)
    {
        /// <summary>Gets every walk over the plot with the spreader: lime of the first day, fertilizer, seed.</summary>
        public ImmutableArray<PlannedWalk> Walks => PlannedWalks.Of(Guard.NotNull(answers));
    }
}
