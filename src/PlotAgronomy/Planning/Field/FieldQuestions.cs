using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Which questions are asked before buying, which at a step of the work, and which are left behind.</summary>
internal sealed class FieldQuestions
{
    /// <param name="stakes">The questions of the plan with what rests on them.</param>
    /// <param name="room">Lines that are left for them.</param>
    internal FieldQuestions(PlanStakes stakes, int room)
    {
        AtWork = [.. stakes.Questions.Select(s => s.Question).Where(q => FindingPlaces.Of(q) is not null)];
        var before = stakes.Questions.Where(q => !q.ChangesNothing && !AtWork.Contains(q.Question)).ToImmutableArray();
        Weakest = stakes.WorthMeasuringAgain;
        Asked = [.. before.Take(Math.Max(1, room - (Weakest is null ? 0 : 1)))];
        Behind = [.. before.Skip(Asked.Length)];
    }

    internal ImmutableArray<OpenQuestion> AtWork { get; }

    internal ImmutableArray<QuestionStake> Asked { get; }

    internal ImmutableArray<QuestionStake> Behind { get; }

    internal MeasuredStake? Weakest { get; }

    /// <summary>Lines they take.</summary>
    internal int Lines => Asked.Length + (Weakest is null ? 0 : 1);

    internal ImmutableArray<OpenQuestion> At(WorkPlace place) => [.. AtWork.Where(q => FindingPlaces.Of(q) == place)];
}
