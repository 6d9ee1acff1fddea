using System.Collections.Immutable;
using PlotAgronomy.Liming;
using PlotAgronomy.Reference;
using UnitsNet;

namespace PlotAgronomy.Planning;

/// <summary>The lime under each plausible answer to a question, side by side.</summary>
internal static class LimeCases
{
    /// <param name="plan">Plan.</param>
    /// <param name="question">What is not known.</param>
    /// <param name="again">Solves the lime of a changed plan.</param>
    internal static ImmutableArray<AnswerCase<LimeAnswer>> Of(
        PlotPlan plan,
        OpenQuestion question,
        Func<PlotPlan, Answer<LimeAnswer>> again
    ) =>
        question switch
        {
            OpenQuestion<LimeMethod> { Code: LimingCodes.AskBuffer } buffer => buffer.Cases(m => again(InBufferOf(plan, m))),
            OpenQuestion<LimeMethod> method => method.Cases(m => again(plan with { LimeMethod = m })),
            OpenQuestion<LimeBasis> basis when plan.Printed!.Lime! is { UpTo: not null } printed =>
            [
                .. from end in printed.Ends
                from one in basis.Cases(b => again(Labelled(plan, p => p.At(end).With(basis: b))))
                select one.Under(printed.AmountOf(end)),
            ],
            OpenQuestion<LimeBasis> basis => basis.Cases(b => again(Labelled(plan, printed => printed.With(basis: b)))),
            OpenQuestion<ApplicationRate> end when plan.Printed?.Lime?.Basis is not null => end.Cases(meant =>
                again(Labelled(plan, printed => printed.At(meant)))
            ),
            OpenQuestion<Length> depth => depth.Cases(d => again(Labelled(plan, printed => printed.With(depth: d)))),
            _ => [],
        };

    private static PlotPlan InBufferOf(PlotPlan plan, LimeMethod method) =>
        plan with
        {
            Report = LimeQuestions.InBuffer(plan.ReportOrNone, method.Buffers[0]),
            LimeMethod = method,
        };

    private static PlotPlan Labelled(PlotPlan plan, Func<PrintedLimeRate, PrintedLimeRate> label) =>
        plan with
        {
            Printed = plan.Printed! with { Lime = label(plan.Printed.Lime!) },
        };
}
