using PlotAgronomy.Records;

namespace PlotAgronomy.Planning;

/// <summary>The history of a plot whose plan is at hand.</summary>
public static class PlanHistory
{
    extension(PlotHistory)
    {
        /// <summary>What the book tells of the plot of a plan. For a stand that is thin or failed it names kinds that are still
        /// in time, by the printed dates and the frost of the place.</summary>
        /// <param name="book">Book.</param>
        /// <param name="plan">Plan of the plot.</param>
        /// <param name="on">Day up to which it is told.</param>
        /// <returns>The history.</returns>
        /// <exception cref="ArgumentException">The book has nothing of the plot.</exception>
        public static PlotHistory Of(PlotBook book, PlotPlan plan, DateOnly on)
        {
            Guard.NotNull(book);
            Guard.NotNull(plan);
            return PlotHistory.Of(book, plan.Plot.Name, plan.Plot.Area, on, stand => StandRemedies.For(plan, stand, on));
        }
    }
}
