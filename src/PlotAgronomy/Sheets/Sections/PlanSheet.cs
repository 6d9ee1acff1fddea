using System.Collections.Immutable;
using PlotAgronomy.Sheets;

namespace PlotAgronomy;

/// <summary>The field sheet of a whole plan.</summary>
public static class PlanSheet
{
    extension(FieldSheet)
    {
        /// <summary>Says what every room answered about a plan, in the order in which a person works.</summary>
        /// <param name="answers">Answers, as <see cref="PlanSolver.Solve(PlotPlan)"/> gives them.</param>
        /// <returns>The sheet.</returns>
        /// <exception cref="ArgumentNullException">Null.</exception>
        /// <exception cref="InvalidOperationException">The seed is open; the message names the questions.</exception>
        public static FieldSheet Of(PlotAnswers answers)
        {
            ArgumentNullException.ThrowIfNull(answers);
            bool isSown = answers.Seed.State != AnswerState.NoneNeeded;
            bool isJudged = answers.Verdict.State != AnswerState.NoneNeeded;
            ImmutableArray<SheetSection> work =
            [
                .. isJudged ? [VerdictSection.Write(answers)] : Enumerable.Empty<SheetSection>(),
                .. answers.Questions.IsEmpty ? Enumerable.Empty<SheetSection>() : [QuestionsSection.Write(answers)],
                ReportSection.Write(answers),
                LimeSection.Write(answers),
                FertilizerSection.Write(answers),
                .. isSown || !answers.Plan.Kinds.IsEmpty ? [SeedSection.Write(answers)] : Enumerable.Empty<SheetSection>(),
                WorkOrderSection.Write(answers),
                .. isSown ? [PassSection.Write(answers)] : Enumerable.Empty<SheetSection>(),
                ShoppingSection.Write(answers),
            ];
            string what = answers.Plan.Kinds.IsEmpty ? "upkeep" : "planting";
            return SheetEnding.Close(
                $"{answers.Plan.Plot.Name}: {what} of {SheetText.Date(answers.Plan.PlantingDate)}",
                work,
                answers.Findings,
                isJudged ? answers.Verdict.Told.Said : []
            );
        }
    }
}
