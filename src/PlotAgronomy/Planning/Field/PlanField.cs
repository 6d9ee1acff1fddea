namespace PlotAgronomy.Planning;

/// <summary>The work of a plan that was solved, as it is carried to the field.</summary>
public static class PlanField
{
    extension(PlotAnswers answers)
    {
        /// <summary>Gets the dated steps, the walks with the spreader, what to watch and what to write down.</summary>
        public FieldPlan Field => FieldPlan.Of(Guard.NotNull(answers));
    }
}
