using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>What rests on the facts that are not known, and on those that were measured: the plan solved again with one of them
/// changed.</summary>
/// <remarks>Worked out when first asked for.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class PlanStakes
{
    private readonly Lazy<ImmutableArray<QuestionStake>> questions;
    private readonly Lazy<ImmutableArray<MeasuredStake>> measured;

    internal PlanStakes(PlotAnswers answers)
    {
        questions = new(() => QuestionStakes.Of(answers));
        measured = new(() => MeasuredStakes.Of(answers));
    }

    /// <summary>Gets every open question of the plan, most money and seed at stake first. Those beyond the number that is weighed
    /// have no cases.</summary>
    public ImmutableArray<QuestionStake> Questions => questions.Value;

    /// <summary>Gets the measured numbers whose error is known, most money and seed at stake first.</summary>
    public ImmutableArray<MeasuredStake> Measured => measured.Value;

    /// <summary>Gets the measured number with most at stake; null where nothing rests on any.</summary>
    public MeasuredStake? WorthMeasuringAgain => Measured is [var first, ..] && first.AtStake.Length > 0 ? first : null;

    /// <summary>How many questions and numbers there are.</summary>
    /// <returns>The text.</returns>
    public override string ToString() =>
        $"{Amounts.Print(Questions.Length, 0)} questions, {Amounts.Print(Measured.Length, 0)} measured numbers";
}
