using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>Makes answers: rooms say what they have, and questions and findings are only put together when asked for.</summary>
internal static class Answers
{
    /// <summary>An answer with its value.</summary>
    internal static Answer<T> Given<T>(
        T value,
        Func<ImmutableArray<Finding>>? findings = null,
        Func<ImmutableArray<OpenQuestion>>? questions = null
    )
        where T : notnull => new(AnswerState.Given, true, value, questions, null, findings);

    /// <summary>Nothing is needed, told by a value that says zero.</summary>
    internal static Answer<T> NoneNeeded<T>(T zero, Func<ImmutableArray<Finding>>? findings = null)
        where T : notnull => new(AnswerState.NoneNeeded, true, zero, null, null, findings);

    /// <summary>Nothing is needed, and there is no value that says so.</summary>
    internal static Answer<T> NoneNeeded<T>()
        where T : notnull => new(AnswerState.NoneNeeded, false, default);

    /// <summary>Nothing was asked.</summary>
    internal static Answer<T> NotAsked<T>()
        where T : notnull => new(AnswerState.NotAsked, false, default);

    /// <summary>Nothing was asked; what stands here has nothing to say.</summary>
    internal static Answer<T> NotAsked<T>(T part)
        where T : notnull => new(AnswerState.NotAsked, true, part);

    /// <summary>No answer until a question is answered.</summary>
    /// <param name="questions">At least one.</param>
    /// <param name="cases">What it would be under an assumption each.</param>
    /// <param name="findings">Why it stays open, where more than a fact is missing.</param>
    internal static Answer<T> Open<T>(
        Func<ImmutableArray<OpenQuestion>> questions,
        Func<ImmutableArray<AnswerCase<T>>>? cases = null,
        Func<ImmutableArray<Finding>>? findings = null
    )
        where T : notnull => new(AnswerState.Open, false, default, questions, cases, findings);

    /// <summary>No answer until a question is answered, and a part that is known.</summary>
    /// <param name="part">What is known of the answer.</param>
    /// <param name="questions">At least one.</param>
    /// <param name="cases">What it would be under an assumption each.</param>
    /// <param name="findings">Remarks on what is known.</param>
    internal static Answer<T> OpenButFor<T>(
        T part,
        Func<ImmutableArray<OpenQuestion>> questions,
        Func<ImmutableArray<AnswerCase<T>>>? cases = null,
        Func<ImmutableArray<Finding>>? findings = null
    )
        where T : notnull => new(AnswerState.Open, true, part, questions, cases, findings);

    /// <summary>The value, or null where there is none.</summary>
    internal static T? OrNull<T>(this Answer<T> answer)
        where T : class => answer.TryGet(out var value) ? value : null;
}
