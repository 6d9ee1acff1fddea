using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>How the answer to a question is put into a plan.</summary>
internal abstract class WayIntoPlan
{
    private protected WayIntoPlan() { }

    /// <summary>A way that gives null where this plan has no place for the answer.</summary>
    internal static WayIntoPlan For<T>(Func<PlotPlan, OpenQuestion<T>, T, PlotPlan?> put)
        where T : notnull => new Typed<T>(put);

    /// <summary>The plan with each plausible answer; none where the question has none, or the plan no place for them.</summary>
    internal abstract ImmutableArray<AnsweredPlan> Answered(PlotPlan plan, OpenQuestion question);

    private sealed class Typed<T>(Func<PlotPlan, OpenQuestion<T>, T, PlotPlan?> put) : WayIntoPlan
        where T : notnull
    {
        internal override ImmutableArray<AnsweredPlan> Answered(PlotPlan plan, OpenQuestion question) =>
            question is OpenQuestion<T> typed
                ?
                [
                    .. from value in typed.Plausible
                    let changed = put(plan, typed, value)
                    where changed is not null
                    select new AnsweredPlan(value, typed.InWords(value), changed),
                ]
                : [];
    }
}
