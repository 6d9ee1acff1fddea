using System.Runtime.CompilerServices;

namespace PlotAgronomy.Planning;

/// <summary>What rests on the facts behind the answers to a plan.</summary>
public static class StakesOfAnswers
{
    /// <summary>Worked out once for the same answers, for it takes many times their own work.</summary>
    private static readonly ConditionalWeakTable<PlotAnswers, PlanStakes> Known = [];

    /// <param name="answers">Answers, as <see cref="PlanSolver.Solve(PlotPlan)"/> gives them.</param>
    extension(PlotAnswers answers)
    {
        /// <summary>Gets what rests on the open questions and on the measured numbers; the plan is solved again for it when this
        /// is first asked for.</summary>
        public PlanStakes Stakes => Known.GetValue(answers, a => new PlanStakes(a));
    }
}
