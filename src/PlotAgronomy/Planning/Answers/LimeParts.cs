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

    internal static Answer<LimeOrder> Order(LimeAnswer lime)
    {
        var (rate, offers) = (lime.Rate, lime.Offers);
        if (rate.State != AnswerState.Given)
        {
            return rate.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<LimeOrder>()
                : Answers.Open(() => rate.Questions, () => LimeCases.Orders(lime.Cases()));
        }

        if (offers?.CheapestForPlot?.Order is { } order)
        {
            return new(AnswerState.Given, true, order, null, () => LimeCases.Orders(lime.Cases()), () => order.Findings);
        }

        ImmutableArray<LimeOfferCost> uncounted = [.. offers?.Costs.Where(c => c.Question is not null) ?? []];
        return uncounted.IsEmpty
            ? Answers.Open<LimeOrder>(() => [LimeQuestions.Offer()])
            : Answers.Open<LimeOrder>(
                () => [.. uncounted.Select(c => c.Question!)],
                () => [.. uncounted.SelectMany(c => c.Question!.CasesOf(c.OrderWith))]
            );
    }

    internal static Answer<LimeOutlook> Outlook(PlotPlan plan, LimeAnswer lime, Func<DateOnly, LimeOutlook?> expectedOn)
    {
        var order = lime.Order;
        if (order.State != AnswerState.Given)
        {
            return order.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<LimeOutlook>()
                : Answers.Open<LimeOutlook>(() => order.Questions);
        }

        if (lime.Expected is { } outlook)
        {
            return Answers.Given(outlook, () => outlook.Findings);
        }

        if (plan.Kinds.IsEmpty)
        {
            return Answers.NoneNeeded<LimeOutlook>();
        }

        if (lime.Printed is { TargetPh: null })
        {
            return Answers.Open<LimeOutlook>(() => lime.Missing);
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
