namespace PlotAgronomy.Sample.Commands;

/// <summary>One thing that is asked.</summary>
/// <param name="Id">Stands in the file where the questions go on later.</param>
/// <param name="Part">What lies before the owner: tape, report, bags, spreader.</param>
/// <param name="Place">Where the answer stands in the plan file; empty where <see cref="IsAsked"/> alone tells whether it is
/// open.</param>
/// <param name="Words">The question.</param>
internal sealed record StartQuestion(string Id, string Part, string Place, string Words)
{
    /// <summary>Gets what puts the answer into the draft; it throws <see cref="BadAnswerException"/> where it cannot be
    /// read.</summary>
    internal required Action<PlanDraft, string> Take { get; init; }

    /// <summary>Gets what was understood, in a few words.</summary>
    internal required Func<PlanDraft, string> Understood { get; init; }

    /// <summary>Gets whether it is worth asking after what was answered.</summary>
    internal Func<PlanDraft, bool> IsAsked { get; init; } = _ => true;

    /// <summary>Gets the question where its words depend on what was answered.</summary>
    internal Func<PlanDraft, string>? WordsFor { get; init; }

    /// <summary>Gets a value indicating whether more lines are read until a blank one.</summary>
    internal bool IsList { get; init; }

    /// <summary>Gets a value indicating whether it is asked once more as long as it is worth asking.</summary>
    internal bool IsRepeated { get; init; }

    /// <summary>Gets what is done where the owner does not know, and says so in a line; null says nothing.</summary>
    internal Func<PlanDraft, string?> Leave { get; init; } = _ => null;

    /// <summary>Whether it still waits for an answer: of a plan begun by hand only what is lacking is asked.</summary>
    internal bool IsOpen(PlanDraft draft) => IsAsked(draft) && (Place.Length == 0 || !draft.Has(Place));
}
