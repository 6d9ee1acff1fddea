using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>The parts of the answer on lime (order, outlook, sulfur), each given, not needed or open.</summary>
internal static class LimeParts
{
    internal static Answer<LimeRate> Rate(PlotPlan plan, LimeRate? used, LimeNeed computed) =>
        used is not null
            ? (used.OfBasis == ApplicationRate.Zero ? Answers.NoneNeeded(used) : Answers.Given(used))
            : Answers.Open<LimeRate>(() => Missing(plan, computed));

    internal static Answer<LimeOrder> Order(Answer<LimeRate> rate, LimingMaterialComparison? offers)
    {
        if (rate.State != AnswerState.Given)
        {
            return rate.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<LimeOrder>()
                : Answers.Open<LimeOrder>(() => rate.Questions);
        }

        if (offers?.CheapestForPlot?.Order is { } order)
        {
            return Answers.Given(order, () => order.Findings);
        }

        ImmutableArray<LimeOfferCost> uncounted = [.. offers?.Costs.Where(c => c.Question is not null) ?? []];
        return uncounted.IsEmpty
            ? Answers.Open<LimeOrder>(() => [LimeQuestions.Offer()])
            : Answers.Open<LimeOrder>(
                () => [.. uncounted.Select(c => c.Question!)],
                () => [.. uncounted.SelectMany(c => c.Question!.CasesOf(c.OrderWith))]
            );
    }

    internal static Answer<LimeOutlook> Outlook(
        PlotPlan plan,
        Answer<LimeOrder> order,
        LimeOutlook? expected,
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

        if (plan.Report.WaterPh is null)
        {
            return Answers.Open<LimeOutlook>(() => [SoilQuestions.WaterPh(plan.Report)]);
        }

        var day = LimeQuestions.Day(plan.PlantingDate);
        return Answers.Open(() => [day], () => day.CasesOf(expectedOn));
    }

    internal static Answer<SulfurNeed> Sulfur(PlotPlan plan, double targetPh)
    {
        if (plan.Report.WaterPh is not { } ph)
        {
            return Answers.Open<SulfurNeed>(() => [SoilQuestions.WaterPh(plan.Report)]);
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

    private static ImmutableArray<OpenQuestion> Missing(PlotPlan plan, LimeNeed computed) =>
        plan.Printed?.Lime is { } printed ? [.. LimeQuestions.For(printed, plan.Report.Laboratory)] : computed.Questions;
}
