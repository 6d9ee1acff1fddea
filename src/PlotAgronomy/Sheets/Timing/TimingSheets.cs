using PlotAgronomy.Calendar;

namespace PlotAgronomy.Sheets;

/// <summary>The sheets of dates: the season, and sow now or wait.</summary>
public static class TimingSheets
{
    extension(FieldSheet)
    {
        /// <summary>Says when to sow by a forecast.</summary>
        /// <param name="plan">Plan.</param>
        /// <param name="decision">Decision for that plan.</param>
        /// <returns>The sheet.</returns>
        /// <exception cref="ArgumentNullException">Null.</exception>
        public static FieldSheet Of(PlotPlan plan, PlantingDecision decision)
        {
            ArgumentNullException.ThrowIfNull(plan);
            ArgumentNullException.ThrowIfNull(decision);
            return DecisionSheet.Write(plan.Plot.Name, decision);
        }

        /// <summary>Lays out the season of a plan as a dated list.</summary>
        /// <param name="answers">Answers, as <see cref="PlanSolver.Solve(PlotPlan)"/> gives them.</param>
        /// <returns>The sheet.</returns>
        /// <exception cref="ArgumentNullException">Null.</exception>
        public static FieldSheet OfSeason(PlotAnswers answers)
        {
            ArgumentNullException.ThrowIfNull(answers);
            return CalendarSheet.Write(answers);
        }
    }
}
