using System.Collections.Immutable;

namespace PlotAgronomy.Reference;

/// <summary>Works an answer out for the plausible values of a question.</summary>
internal static class QuestionCases
{
    /// <summary>What an answer would be for each plausible value that it can be worked out for.</summary>
    internal static ImmutableArray<AnswerCase<TAnswer>> Cases<T, TAnswer>(
        this OpenQuestion<T> question,
        Func<T, Answer<TAnswer>> answer
    )
        where T : notnull
        where TAnswer : notnull =>
        [
            .. from value in question.Plausible
            let found = answer(value)
            where found.TryGet(out _)
            select new AnswerCase<TAnswer>(question, value, question.InWords(value), found.Value),
        ];

    /// <summary>The same where a plausible value has an answer, or null.</summary>
    internal static ImmutableArray<AnswerCase<TAnswer>> CasesOf<T, TAnswer>(
        this OpenQuestion<T> question,
        Func<T, TAnswer?> answer
    )
        where T : notnull
        where TAnswer : class =>
        question.Cases(value => answer(value) is { } given ? Answers.Given(given) : Answers.NoneNeeded<TAnswer>());
}
