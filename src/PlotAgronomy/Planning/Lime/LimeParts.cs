using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>The parts of the answer on lime (order, outlook, sulfur), each given, not needed or open.</summary>
internal static class LimeParts
{
    internal static Answer<LimeRate> Rate(LimeRate? used, ImmutableArray<OpenQuestion> missing) =>
        used is not null
            ? (used.OfBasis == ApplicationRate.Zero ? Answers.NoneNeeded(used) : Answers.Given(used))
            : Answers.Open<LimeRate>(() => missing);

    /// <param name="rate">Rate to be ordered for.</param>
    /// <param name="offers">Liming materials on offer.</param>
    /// <param name="cases">The order under each answer to what is missing.</param>
    internal static Answer<LimeOrder> Order(
        Answer<LimeRate> rate,
        LimingMaterialComparison? offers,
        Func<ImmutableArray<AnswerCase<LimeOrder>>> cases
    )
    {
        if (rate.State != AnswerState.Given)
        {
            return rate.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<LimeOrder>()
                : Answers.Open(() => rate.Questions, cases);
        }

        if (offers?.CheapestForPlot?.Order is { } order)
        {
            return new(AnswerState.Given, true, order, null, cases, () => order.Findings);
        }

        ImmutableArray<LimeOfferCost> uncounted = [.. offers?.Costs.Where(c => c.Question is not null) ?? []];
        return uncounted.IsEmpty
            ? Answers.Open<LimeOrder>(() => [LimeQuestions.Offer()])
            : Answers.Open<LimeOrder>(
                () => [.. uncounted.Select(c => c.Question!)],
                () => [.. uncounted.SelectMany(c => c.Question!.CasesOf(c.OrderWith))]
            );
    }

    /// <param name="plan">Plan.</param>
    /// <param name="order">What is bought and spread.</param>
    /// <param name="expected">The outlook of that order; null while a fact for it is missing.</param>
    /// <param name="missing">What a printed rate leaves open.</param>
    /// <param name="expectedOn">The outlook if the lime is spread on a day.</param>
    internal static Answer<LimeOutlook> Outlook(
        PlotPlan plan,
        Answer<LimeOrder> order,
        LimeOutlook? expected,
        ImmutableArray<OpenQuestion> missing,
        Func<DateOnly, LimeOutlook?> expectedOn
    )
    {
        if (order.State != AnswerState.Given)
        {
            return order.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<LimeOutlook>()
                : Answers.Open<LimeOutlook>(() => order.Questions);
        }

        if (expected is { } outlook)
        {
            return Answers.Given(outlook, () => outlook.Findings);
        }

        if (plan.Kinds.IsEmpty)
        {
            return Answers.NoneNeeded<LimeOutlook>();
        }

        if (plan.Printed?.Lime is { TargetPh: null })
        {
            return Answers.Open<LimeOutlook>(() => missing);
        }

        if (plan.Soil.WaterPh is null)
        {
            return Answers.Open<LimeOutlook>(() => [PlantingQuestions.WaterPh(plan)]);
        }

        if (plan.PlantingDate is not { } planting)
        {
            return Answers.Open<LimeOutlook>(() => [PlantingQuestions.Day()]);
        }

        var day = LimeQuestions.Day(planting);
        return Answers.Open(() => [day], () => day.CasesOf(expectedOn));
    }

    internal static Answer<SulfurNeed> Sulfur(PlotPlan plan, double? target)
    {
        if (target is not { } targetPh)
        {
            return Answers.NotAsked<SulfurNeed>();
        }

        if (plan.Soil.WaterPh is not { } ph)
        {
            return Answers.Open<SulfurNeed>(() => [PlantingQuestions.WaterPh(plan)]);
        }

        if (ph.Value <= targetPh)
        {
            return Answers.NoneNeeded<SulfurNeed>();
        }

        if (plan.Plot.Texture is { } known)
        {
            var need = SulfurNeed.For(ph, targetPh, known);
            var fizzing = SoilQuestions.FreeLime();
            return new(
                AnswerState.Given,
                true,
                need,
                () => [fizzing],
                () => fizzing.CasesOf(fizzes => SulfurNeed.For(ph, targetPh, known, fizzes)),
                () => need.Findings
            );
        }

        var texture = SoilQuestions.Texture();
        return Answers.Open(() => [texture], () => texture.CasesOf(felt => SulfurNeed.For(ph, targetPh, felt)));
    }
}
