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
            ImmutableArray<SheetSection> work =
            [
                .. answers.Questions.IsEmpty ? Enumerable.Empty<SheetSection>() : [QuestionsSection.Write(answers)],
                ReportSection.Write(answers),
                LimeSection.Write(answers),
                FertilizerSection.Write(answers),
                SeedSection.Write(answers),
                WorkOrderSection.Write(answers),
                PassSection.Write(answers),
                ShoppingSection.Write(answers),
            ];
            string planting = SheetText.Date(answers.Plan.PlantingDate);
            return SheetEnding.Close($"{answers.Plan.Plot.Name}: planting of {planting}", work, answers.Findings);
        }
    }
}
