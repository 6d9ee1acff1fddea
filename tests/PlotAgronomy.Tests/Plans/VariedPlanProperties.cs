using PlotAgronomy.Liming;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Sheets;

namespace PlotAgronomy.Tests.Plans;

/// <summary>What holds of every plan, whatever its day, soil, seed and shelf.</summary>
public class VariedPlanProperties
{
    private const int Drawn = 240;

    private static readonly Lazy<IReadOnlyList<PlotAnswers>> Solved = new(() => [.. VariedPlan.Draw(Drawn, 20261130).Select(p => p.Solve())]);

    private static void All(Action<PlotAnswers> holds) =>
        Assert.All(Solved.Value, holds);

    private static IEnumerable<string> HeldNames(PlotAnswers answers) => answers.Verdict.Told.Held.Select(v => v.Planned.Kind.ShortName);

    [Fact]
    public void The_draws_reach_every_decision()
    {
        var verdicts = Solved.Value.Select(a => a.Verdict.Told).ToList();
        Assert.Superset(
            new HashSet<PlotDecision> { PlotDecision.Sow, PlotDecision.SowWithout, PlotDecision.LimeAndWait, PlotDecision.NothingThisSeason },
            verdicts.Select(v => v.Decision).ToHashSet());
        Assert.Equal(Enum.GetValues<KindDecision>(), verdicts.SelectMany(v => v.Kinds).Select(v => v.Decision).Distinct().Order());
        Assert.Contains(verdicts, v => !v.WithinReach.IsEmpty);
        Assert.Contains(verdicts, v => !v.OutOfReach.IsEmpty);
    }

    [Fact]
    public void What_is_held_is_neither_weighed_out_nor_bought_nor_given_a_pass() =>
        All(answers =>
        {
            string[] sown = [.. answers.Verdict.Told.Sown.Select(v => v.Planned.Kind.Id)];
            Assert.Equal(sown.Length == 0 ? AnswerState.NoneNeeded : AnswerState.Given, answers.Seed.State);
            Assert.Equal(answers.Seed.State, answers.Spreading.State);
            Assert.Equal(sown, answers.Seed.OrNull()?.Kinds.Select(k => k.Planned.Kind.Id) ?? []);
            Assert.Equal(sown.Order(), (answers.Spreading.OrNull()?.Passes ?? []).SelectMany(p => p.Kinds).Select(k => k.Planned.Kind.Id).Order());
            if (sown.Length == 0)
            {
                Assert.Equal(AnswerState.NoneNeeded, answers.Fertilizer.Told.Purchase.State);
            }

            decimal parts = (answers.Lime.Told.Order.OrNull()?.Cost ?? 0) + (answers.Fertilizer.Told.Purchase.OrNull()?.TotalCost ?? 0)
                + (answers.Fertilizer.Told.LaterNitrogen.OrNull()?.Purchase.OrNull()?.TotalCost ?? 0)
                + (answers.Seed.OrNull()?.Kinds.Sum(k => k.Cost) ?? 0);
            Assert.Equal(parts, answers.TotalCost);
        });

    [Fact]
    public void No_step_of_the_sheet_sows_what_is_held() =>
        All(answers =>
        {
            var sheet = FieldSheet.Of(answers);
            foreach (var sowing in answers.Field.Steps.Select(s => s.Work).Where(w => w.Task.Pass is not null))
            {
                Assert.DoesNotContain(HeldNames(answers), sowing.Task.Title.Contains);
                Assert.DoesNotContain(sowing.Materials, m => HeldNames(answers).Contains(m.Name));
            }

            foreach (var held in answers.Verdict.Told.Held)
            {
                Assert.Null(sheet.Find($"buy.seed.{held.Planned.Kind.Id}"));
                Assert.Null(sheet.Find($"seed.{held.Planned.Kind.Id}.weight"));
            }
        });

    [Fact]
    public void Nothing_is_ordered_without_a_need() =>
        All(answers =>
        {
            var lime = answers.Lime.Told;
            if (lime.Order.State == AnswerState.Given)
            {
                Assert.True(lime.Rate.Value.OfBasis > ApplicationRate.Zero);
            }

            if (answers.Fertilizer.Told.Purchase.TryGet(out var bought))
            {
                Assert.True(answers.Fertilizer.Told.IsNeeded);
                Assert.Contains(answers.Need.Told.Targets, t => t.AtLeast > ApplicationRate.Zero);
                Assert.All(bought.Lines, l => Assert.True(l.Rate > ApplicationRate.Zero));
            }
        });

    [Fact]
    public void What_is_not_known_is_never_shown_as_none_needed() =>
        All(answers =>
        {
            if (answers.Lime.State == AnswerState.NoneNeeded)
            {
                Assert.Equal(ApplicationRate.Zero, answers.Lime.Value.Rate.Value.OfBasis);
                Assert.True(answers.Plan.Soil.WaterPh is not null || answers.Plan.Printed?.Lime is not null);
            }

            if (answers.Need.State == AnswerState.NoneNeeded)
            {
                Assert.Empty(answers.Need.Value.NotKnown);
            }

            if (answers.Fertilizer.State == AnswerState.NoneNeeded)
            {
                Assert.NotEqual(AnswerState.Open, answers.Need.State);
            }

            Assert.Equal(answers.Plan.Soil.WaterPh is null, answers.Verdict.State == AnswerState.Open);
            Assert.Equal(answers.Plan.Plot.PlantingRegion is null, answers.Questions.Any(q => q.Code == "seed-ask-region"));
            Assert.Equal(answers.Plan.Plot.Drainage is null, answers.Questions.Any(q => q.Code == "seed-ask-drainage"));
        });

    [Fact]
    public void Forecast_and_hold_back_are_joined_and_come_from_one_need() =>
        All(answers =>
        {
            var verdict = answers.Verdict.Told;
            Assert.DoesNotContain(verdict.Sown, v => v.Planned.Kind.IsTooSourOn(answers.Plan.Soil));
            if (verdict.Expected is { } outlook)
            {
                Assert.Equal(answers.Lime.Told.Need!.OfBasis, outlook.Request.Rate.OfBasis);
            }

            var waiting = verdict.Kinds.Where(v => v.Decision == KindDecision.AfterTest).ToList();
            Assert.Equal(waiting.Count, verdict.WithinReach.Length + verdict.OutOfReach.Length);
            Assert.All(waiting, v => Assert.Equal(1, answers.Findings.Count(f => f.Code == "lime-kind-hold-back" && f.Subject == v.Planned.Kind.ShortName)));
            Assert.DoesNotContain(answers.Findings, f => f.Code == "blend-ph-low");
            string said = string.Join(' ', FieldSheet.Of(answers).Sections[0].Blocks.OfType<SheetSentence>().Select(s => s.Text));
            Assert.Equal(waiting.Count > 0 && verdict.Expected is not null, said.Contains("That is a forecast and sows nothing", StringComparison.Ordinal));
        });

    [Fact]
    public void Load_test_run_and_walk_agree() =>
        All(answers =>
        {
            foreach (var pass in answers.Spreading.OrNull()?.Passes ?? [])
            {
                Assert.Equal(pass.Load.Pounds, pass.Kinds.Sum(k => k.Weight.Pounds), 1e-9);
                Assert.Equal(pass.Rate.PoundsPerAcre, pass.Kinds.Sum(k => k.Bulk.Bulk.PoundsPerAcre), 1e-9);
                double walked = pass.Laid.Value.Path.Feet;
                Assert.Equal(pass.Load.Pounds, pass.TestRunCatch.Pounds * walked / SowingPass.TestRun.Feet, pass.Load.Pounds * 0.02);
            }
        });

    [Fact]
    public void A_substitute_fits_by_its_own_figures() =>
        All(answers =>
        {
            var plan = answers.Plan;
            Assert.InRange(answers.Verdict.Told.Substitutes.Length, 0, 3);
            foreach (var kind in answers.Verdict.Told.Substitutes)
            {
                Assert.DoesNotContain(plan.Kinds, k => k.Kind.Id == kind.Kind.Id);
                Assert.NotNull(kind.Kind.Rates!.For(plan.SowingMethod!.Value));
                Assert.True(plan.Plot.Drainage is not { } drainage || kind.Kind.Drainage?.Stands(drainage) != false);
                Assert.True(plan.Soil.WaterPh is not { } ph || ph.Value >= kind.LowestPh || kind.TestMustShow <= answers.Verdict.Told.Expected!.ExpectedPhHigh);
                Assert.True(plan.Plot.PlantingRegion is null || !kind.Windows.IsEmpty);
            }
        });

    [Fact]
    public void Every_verdict_has_its_reason_and_at_most_two() =>
        All(answers => Assert.All(answers.Verdict.Told.Kinds, v => Assert.InRange(v.Reasons.Length, v.IsSown ? 0 : 1, v.IsSown ? 0 : 2)));
}
