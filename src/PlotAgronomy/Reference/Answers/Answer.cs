using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace PlotAgronomy;

/// <summary>What a room answers: a value, nothing to be done, or questions that stand in the way.</summary>
/// <typeparam name="T">What the room gives.</typeparam>
/// <remarks>
/// <para>Where a room has a value that says zero, <see cref="AnswerState.NoneNeeded"/> gives that value: no lime is a rate of
/// zero with its working. Where it has none, as with a purchase of nothing, <see cref="Value"/> throws and
/// <see cref="TryGet"/> gives false.</para>
/// <para>An open answer may know a part: <see cref="TryGetPart"/> gives it, such as a lime need that knows its target and has
/// no rate. It is there to be looked at, not to be acted on.</para>
/// </remarks>
/// <example>
/// <code>
/// var plan = PlanFile.Read(File.ReadAllText("my-plot.json")).Plan!;
/// var order = plan.Solve().Lime.Value.Order;
/// Console.WriteLine(order.State);
/// // Given
/// Console.WriteLine(order.TryGet(out var bought) ? $"{bought.Bags} bags" : string.Join(" ", order.Questions));
/// // 16 bags
/// </code>
/// </example>
public sealed class Answer<T>
    where T : notnull
{
    private readonly bool holds;
    private readonly T? held;
    private readonly Func<ImmutableArray<OpenQuestion>>? questions;
    private readonly Func<ImmutableArray<AnswerCase<T>>>? cases;
    private readonly Func<ImmutableArray<Finding>>? findings;

    internal Answer(
        AnswerState state,
        bool holds,
        T? held,
        Func<ImmutableArray<OpenQuestion>>? questions = null,
        Func<ImmutableArray<AnswerCase<T>>>? cases = null,
        Func<ImmutableArray<Finding>>? findings = null
    )
    {
        State = state;
        this.holds = holds;
        this.held = held;
        this.questions = questions;
        this.cases = cases;
        this.findings = findings;
    }

    /// <summary>Gets how far the room could answer.</summary>
    public AnswerState State { get; }

    /// <summary>Gets the answer.</summary>
    /// <exception cref="InvalidOperationException">It is open, and the message names the questions; or nothing is needed and the
    /// room has no value that says so.</exception>
    public T Value =>
        TryGet(out var value) ? value
        : State == AnswerState.NoneNeeded
            ? throw new InvalidOperationException($"Nothing is needed, so there is no {typeof(T).Name}.")
        : State == AnswerState.NotAsked
            ? throw new InvalidOperationException($"Nothing was asked, so there is no {typeof(T).Name}.")
        : throw new InvalidOperationException(
            $"{typeof(T).Name} is open: {string.Join(" ", Questions.Select(q => $"{q.Text} [{q.Code}]"))}"
        );

    /// <summary>Gets what the answer would be under an assumption each, for a few of the plausible values of what is not
    /// known.</summary>
    /// <value>None where the room does not work them out.</value>
    public ImmutableArray<AnswerCase<T>> Cases => cases?.Invoke() ?? [];

    /// <summary>Gets what is not known. An open answer has at least one question; beside one that is given they would make it
    /// better.</summary>
    public ImmutableArray<OpenQuestion> Questions => questions?.Invoke() ?? [];

    /// <summary>Gets the remarks, most serious first.</summary>
    public ImmutableArray<Finding> Findings => findings?.Invoke() ?? [];

    /// <summary>Gives the answer, where there is one.</summary>
    /// <param name="value">The answer.</param>
    /// <returns>True when it is given, or when nothing is needed and the room has a value that says so.</returns>
    public bool TryGet([MaybeNullWhen(false)] out T value)
    {
        bool isGiven = holds && State is (AnswerState.Given or AnswerState.NoneNeeded);
        value = isGiven ? held : default;
        return isGiven;
    }

    /// <summary>Gives what is known, even while questions are open.</summary>
    /// <param name="part">The answer, or the part of it that is known.</param>
    /// <returns>True when anything is.</returns>
    public bool TryGetPart([MaybeNullWhen(false)] out T part)
    {
        part = held;
        return holds;
    }

    /// <summary>What is known, even while questions are open; for the sheet, which says both.</summary>
    /// <exception cref="InvalidOperationException">Nothing is known.</exception>
    internal T Told => TryGetPart(out var part) ? part : Value;

    /// <summary>The state, and what is held or asked.</summary>
    /// <returns>Text such as <c>open: lime-reading</c>.</returns>
    public override string ToString() =>
        State switch
        {
            AnswerState.Open => $"open: {string.Join(", ", Questions.Select(q => q.Code))}",
            AnswerState.NoneNeeded => "none needed",
            AnswerState.NotAsked => "not asked",
            _ => $"given: {held}",
        };
}
