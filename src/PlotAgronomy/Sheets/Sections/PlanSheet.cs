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
                .. new SheetSection?[]
                {
                    isJudged ? VerdictSection.Write(answers) : null,
                    QuestionsSection.Write(answers),
                    SamplingSection.Write(answers),
                    ReportSection.Write(answers),
                    LimeSection.Write(answers),
                    FertilizerSection.Write(answers),
                    isSown || !answers.Plan.Kinds.IsEmpty ? SeedSection.Write(answers) : null,
                    WorkOrderSection.Write(answers),
                    isSown ? PassSection.Write(answers) : null,
                    ShoppingSection.Write(answers),
                }.OfType<SheetSection>(),
            ];
            string what = isJudged && answers.Verdict.Told.Upkeep is not null ? "upkeep" : "planting";
            string when = answers.Plan.PlantingDate is { } day ? $"{what} of {SheetText.Date(day)}" : $"{what} day not set";
            var toSay = answers.ToSay;
            return SheetEnding.Close(
                $"{answers.Plan.Plot.Name}: {when}",
                work,
                answers.Findings,
                [.. toSay.Where(SaidIn(work)), .. isJudged ? answers.Verdict.Told.Said : []],
                toSay: toSay,
                background: answers.Background
            );
        }
    }

    /// <summary>Whether a section says it in its place already.</summary>
    private static Func<Finding, bool> SaidIn(ImmutableArray<SheetSection> work)
    {
        string said = string.Join('\n', work.SelectMany(s => s.Blocks).SelectMany(Sentences));
        return finding => said.Contains(finding.Text, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Sentences(SheetBlock block) =>
        block switch
        {
            SheetSentence sentence => [sentence.Text],
            SheetSteps steps => steps.Steps,
            SheetRemarks remarks => remarks.Remarks.Select(r => r.Text),
            _ => [],
        };
}
