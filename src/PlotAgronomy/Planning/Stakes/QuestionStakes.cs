using System.Collections.Immutable;

namespace PlotAgronomy.Planning;

/// <summary>Solves a plan again with one answer at a time.</summary>
internal static class QuestionStakes
{
    private const int MostAssumed = 3;

    internal static ImmutableArray<QuestionStake> Of(PlotAnswers asked)
    {
        var blocking = Blocking(asked).SelectMany(group => group).ToHashSet();
        int solves = (int)StakeConstants.All["most-solves"];
        var stakes = new List<QuestionStake>();
        var weighed = asked
            .Questions.Where(q => !WaysIntoPlan.Answered(asked.Plan, q).IsEmpty)
            .OrderByDescending(blocking.Contains)
            .Take((int)StakeConstants.All["most-questions"])
            .ToList();
        for (int i = 0; i < weighed.Count; i++)
        {
            int share = solves / (weighed.Count - i);
            stakes.Add(Weigh(asked, weighed[i], blocking.Contains(weighed[i]), share, out int used));
            solves -= used;
        }

        return
        [
            .. stakes
                .Concat(
                    asked.Questions.Except(weighed).Select(q => new QuestionStake(q, []) { IsInTheWay = blocking.Contains(q) })
                )
                .OrderByDescending(s => s.Rank),
        ];
    }

    /// <summary>The questions that an answer waits for, by the answer.</summary>
    private static IEnumerable<ImmutableArray<OpenQuestion>> Blocking(PlotAnswers answers) =>
        [
            answers.Lime.State == AnswerState.Open ? answers.Lime.Told.Rate.Questions
            : answers.Lime.Told.Order.State == AnswerState.Open ? answers.Lime.Told.Order.Questions
            : [],
            answers.Need.Questions,
            answers.Fertilizer.Told.Purchase.State == AnswerState.Open ? answers.Fertilizer.Told.Purchase.Questions : [],
            answers.Seed.State == AnswerState.Open ? answers.Seed.Questions : [],
        ];

    private static QuestionStake Weigh(PlotAnswers asked, OpenQuestion question, bool isInTheWay, int most, out int used)
    {
        var answers = WaysIntoPlan.Answered(asked.Plan, question);
        var assumed = new List<(OpenQuestion Question, string Answer)>();
        int solves = 0;
        var first = Solved(answers[0].Plan, isInTheWay);
        var taken = Thinned(answers, Math.Max(2, most - solves + 1));
        var cases = taken.Select((a, i) => Case(a, i == 0 ? first : Solved(With(a.Plan, assumed), assumed.Count > 0))).ToList();
        used = solves;
        return new(question, [.. cases]) { Assumed = [.. assumed], IsInTheWay = isInTheWay };

        AnswerCase<PlotAnswers> Case(AnsweredPlan answer, PlotAnswers solved) =>
            new(question, answer.Value, answer.InWords, solved);

        // Where the first answer waits for something, another may wait for the like of it: then each is given its own.
        PlotAnswers Solved(PlotPlan plan, bool waits)
        {
            var solved = plan.Solve();
            solves++;
            for (int more = 0; waits && more < MostAssumed && solves < most && Waiting(solved, question) is { } other; more++)
            {
                var told = (other.Question, other.Likely.InWords);
                if (assumed.TrueForAll(a => a.Question.Text != told.Question.Text))
                {
                    assumed.Add(told);
                }

                solved = other.Likely.Plan.Solve();
                solves++;
            }

            return solved;
        }
    }

    /// <summary>What the answer to a question still waits for, with the plan that has the likeliest answer to it: the middle of
    /// numbers, the first of names.</summary>
    private static (OpenQuestion Question, AnsweredPlan Likely)? Waiting(PlotAnswers solved, OpenQuestion asked)
    {
        foreach (
            var question in Blocking(solved).SelectMany(group => group).Where(q => Room(q) == Room(asked) && q.Code != asked.Code)
        )
        {
            if (WaysIntoPlan.Answered(solved.Plan, question) is { IsEmpty: false } answers)
            {
                return (question, answers[IsByNumber(question) ? answers.Length / 2 : 0]);
            }
        }

        return null;
    }

    private static bool IsByNumber(OpenQuestion question) => question is OpenQuestion<double> or OpenQuestion<UnitsNet.Length>;

    /// <summary>The room that raises a question stands before the first hyphen of its code.</summary>
    private static string Room(OpenQuestion question) => question.Code.Split('-')[0];

    private static PlotPlan With(PlotPlan plan, IReadOnlyList<(OpenQuestion Question, string Answer)> assumed) =>
        assumed.Aggregate(plan, (changed, other) =>
            WaysIntoPlan.Answered(changed, other.Question).FirstOrDefault(a => a.InWords == other.Answer)?.Plan ?? changed
        );

    /// <summary>The first, the last and others between, as many as may be solved.</summary>
    private static ImmutableArray<AnsweredPlan> Thinned(ImmutableArray<AnsweredPlan> answers, int most) =>
        answers.Length <= most
            ? answers
            : [.. Enumerable.Range(0, most).Select(i => answers[i * (answers.Length - 1) / (most - 1)])];
}
