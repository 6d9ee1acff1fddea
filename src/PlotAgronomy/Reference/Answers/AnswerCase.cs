using System.Diagnostics.CodeAnalysis;

namespace PlotAgronomy;

/// <summary>What an answer would be if a fact had one of its plausible values.</summary>
/// <typeparam name="T">What the room gives.</typeparam>
public sealed class AnswerCase<T>
    where T : notnull
{
    private readonly object assumed;

    internal AnswerCase(OpenQuestion question, object assumed, string assumption, T value)
    {
        this.assumed = assumed;
        Question = question;
        Assumption = assumption;
        Value = value;
    }

    /// <summary>Gets the question that the assumption would answer.</summary>
    public OpenQuestion Question { get; }

    /// <summary>Gets the assumption in words, such as <c>South Carolina, Piedmont</c>.</summary>
    public string Assumption { get; }

    /// <summary>Gets what the answer would be.</summary>
    public T Value { get; }

    /// <summary>Gives the assumption as the fact it is.</summary>
    /// <typeparam name="TFact">Type of the fact, as the question has it.</typeparam>
    /// <param name="fact">The assumed fact.</param>
    /// <returns>True when the question is about facts of this type.</returns>
    public bool TryGetAssumed<TFact>([MaybeNullWhen(false)] out TFact fact)
    {
        bool isOfThatType = assumed is TFact;
        fact = isOfThatType ? (TFact)assumed : default;
        return isOfThatType;
    }

    /// <summary>The same assumption with a part of what follows.</summary>
    internal AnswerCase<TPart> Holding<TPart>(TPart part)
        where TPart : notnull => new(Question, assumed, Assumption, part);

    /// <summary>The same under one more assumption, which its words say.</summary>
    internal AnswerCase<T> Under(string more) => new(Question, assumed, $"{Assumption}, {more}", Value);

    /// <summary>The assumption and what follows.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{Assumption}: {Value}";
}
