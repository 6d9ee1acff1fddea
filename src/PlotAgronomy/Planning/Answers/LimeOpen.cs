using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>Where lime is needed, not needed, or a question stands in the way.</summary>
internal static class LimeOpen
{
    internal static Answer<LimeRate> Rate(PlotPlan plan, LimeRate? used, LimeNeed computed) =>
        used is not null
            ? (used.OfBasis == ApplicationRate.Zero ? Answers.NoneNeeded(used) : Answers.Given(used))
            : Answers.Open<LimeRate>(() => Missing(plan, computed));

    /// <summary>The answer of the room: open without a rate, and then with what a method or a label would make of it.</summary>
    internal static Answer<LimeAnswer> Whole(PlotPlan plan, LimeAnswer lime, Func<PlotPlan, Answer<LimeAnswer>> again) =>
        lime.Rate.State switch
        {
            AnswerState.Open => Answers.OpenButFor(
                lime,
                () => [.. lime.Questions],
                () => [.. lime.Rate.Questions.SelectMany(q => Cases(plan, q, again))],
                () => lime.Findings
            ),
            AnswerState.NoneNeeded => new(
                AnswerState.NoneNeeded,
                true,
                lime,
                () => [.. lime.Questions],
                null,
                () => lime.Findings
            ),
            _ => Answers.Given(lime, () => lime.Findings, () => [.. lime.Questions]),
        };

    internal static Answer<LimeOrder> Order(LimeAnswer lime)
    {
        if (lime.Rate.State != AnswerState.Given)
        {
            return lime.Rate.State == AnswerState.NoneNeeded
                ? Answers.NoneNeeded<LimeOrder>()
                : Answers.Open<LimeOrder>(() => lime.Rate.Questions);
        }

        if (lime.Offers?.CheapestForPlot?.Order is { } order)
        {
            return Answers.Given(order, () => order.Findings);
        }

        ImmutableArray<LimeOfferCost> uncounted = [.. lime.Offers?.Costs.Where(c => c.Question is not null) ?? []];
        return uncounted.IsEmpty
            ? Answers.Open<LimeOrder>(() => [LimeQuestions.Offer()])
            : Answers.Open<LimeOrder>(
                () => [.. uncounted.Select(c => c.Question!)],
                () => [.. uncounted.SelectMany(c => c.Question!.CasesOf(c.OrderWith))]
            );
    }

    internal static Answer<LimeOutlook> Outlook(PlotPlan plan, LimeAnswer lime)
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

        if (plan.Report.WaterPh is null)
        {
            return Answers.Open<LimeOutlook>(() => [SoilQuestions.WaterPh(plan.Report)]);
        }

        var day = LimeQuestions.Day(plan.PlantingDate);
        return Answers.Open(() => [day], () => day.CasesOf(on => lime.On(on).OrNull()?.Expected));
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

    private static ImmutableArray<AnswerCase<LimeAnswer>> Cases(
        PlotPlan plan,
        OpenQuestion question,
        Func<PlotPlan, Answer<LimeAnswer>> again
    ) =>
        question switch
        {
            OpenQuestion<LimeMethod> method => method.Cases(m => again(plan with { LimeMethod = m })),
            OpenQuestion<LimeBasis> basis => basis.Cases(b => again(Labelled(plan, printed => Read(printed, basis: b)))),
            _ => [],
        };

    private static PlotPlan Labelled(PlotPlan plan, Func<PrintedLimeRate, PrintedLimeRate> label) =>
        plan with
        {
            Printed = plan.Printed! with { Lime = label(plan.Printed.Lime!) },
        };

    private static PrintedLimeRate Read(PrintedLimeRate printed, LimeBasis basis) =>
        PrintedLimeRate.Read(printed.OfBasis, printed.TargetPh, printed.Depth, basis, printed.Institution);
}
