using System.Collections.Immutable;
using PlotAgronomy.Planning;
using PlotAgronomy.Sheets;

namespace PlotAgronomy;

/// <summary>The field sheet of a whole plan.</summary>
/// <example>
/// <code>
/// var plan = PlanFile.Read(File.ReadAllText("my-plot.json")).Plan!;
/// var answers = plan.Solve();
/// Console.WriteLine(FieldSheet.Of(answers).Title);
/// // Fern Bottom: planting of 2026-09-12
/// Console.WriteLine(FieldSheet.OfSeason(answers).Title);
/// // Fern Bottom: season around 2026-09-12
/// </code>
/// </example>
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
            var field = answers.Field;
            ImmutableArray<SheetSection> told =
            [
                .. new SheetSection?[]
                {
                    isJudged ? VerdictSection.Write(answers) : null,
                    QuestionsSection.Write(field),
                    BuySection.Write(answers, field),
                    StepSections.Before(answers, field),
                    SpreadSection.Write(answers, field),
                    StepSections.After(answers, field),
                    WatchSection.Write(field),
                    WriteDownSection.Write(field),
                    SamplingSection.Write(answers),
                    ReportSection.Write(answers),
                    LimeSection.Write(answers),
                    FertilizerSection.Write(answers),
                    isSown || !answers.Plan.Kinds.IsEmpty ? SeedSection.Write(answers) : null,
                    QuestionsSection.WriteLater(field),
                    FindingsSection.WriteBehind(answers, field),
                    VerdictSection.WriteSubstitutes(answers),
                    QuestionsSection.WritePlausible(field),
                    FertilizerSection.WriteWorking(answers),
                    SeedSection.WriteWorking(answers),
                    isSown ? PassSection.Write(answers) : null,
                    FindingsSection.WriteNotes(field),
                }.OfType<SheetSection>(),
            ];
            var sources = SheetEnding.SourcesOf(told, answers.Findings, []);
            string what = isJudged && answers.Verdict.Told.Upkeep is not null ? "upkeep" : "planting";
            string when = answers.Plan.PlantingDate is { } day ? $"{what} of {SheetText.Date(day)}" : $"{what} day not set";
            return new FieldSheet
            {
                Title = $"{answers.Plan.Plot.Name}: {when}",
                Sections =
                [
                    .. told.Where(s => s.Part != SheetPart.Work),
                    SourcesSection.WriteShort(sources),
                    .. told.Where(s => s.Part == SheetPart.Work),
                    .. answers.Background.IsEmpty
                        ? Enumerable.Empty<SheetSection>()
                        : [FindingsSection.WriteBackground(answers.Background)],
                    SourcesSection.Write(sources, SheetPart.Work),
                ],
                Findings = answers.Findings,
                Sources = sources,
            };
        }
    }
}
