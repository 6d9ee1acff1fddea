namespace PlotAgronomy.Sample.Commands;

/// <summary>Asks one thing at a time, checks each answer as it comes, and keeps what it has after every one.</summary>
/// <param name="draft">The plan that is filled in.</param>
/// <param name="answers">Where answers come from: a person or a script.</param>
/// <param name="output">Where questions go.</param>
/// <param name="keep">Writes the draft down.</param>
internal sealed class StartInterview(PlanDraft draft, TextReader answers, TextWriter output, Action<PlanDraft> keep)
{
    private const int LongestAnswer = 500;

    private string part = "";

    private enum Outcome
    {
        Answered,
        Back,
        Ended,
    }

    /// <summary>Asks what is open.</summary>
    /// <returns>Whether all was asked; false where the person stopped or the answers ended.</returns>
    internal bool Ask()
    {
        var all = StartQuestions.All;
        var asked = new Stack<(int Question, string Draft)>();
        int i = Math.Max(0, all.ToList().FindIndex(q => q.Id == draft.Next));
        bool isAskedAnyway = all[i].Id == draft.Next && all[i].IsList;
        while (i < all.Count)
        {
            if (!isAskedAnyway && !all[i].IsOpen(draft))
            {
                i++;
                continue;
            }

            Mark(all[i].Id);
            string before = draft.Text;
            var outcome = AskOne(all[i], isFirst: asked.Count == 0);
            isAskedAnyway = outcome == Outcome.Back;
            switch (outcome)
            {
                case Outcome.Ended:
                    return false;
                case Outcome.Back:
                    var last = asked.Pop();
                    draft.GoBackTo(last.Draft);
                    i = last.Question;
                    break;
                default:
                    asked.Push((i, all[i].IsList ? draft.Text : before));
                    i += all[i].IsRepeated ? 0 : 1;
                    break;
            }
        }

        Mark(null);
        return true;
    }

    private void Mark(string? id)
    {
        draft.Next = id;
        keep(draft);
    }

    /// <summary>Asks until an answer is taken or left out; a list until a blank line.</summary>
    private Outcome AskOne(StartQuestion question, bool isFirst)
    {
        var lines = new Stack<string>();
        Head(question.Part);
        output.WriteLine(question.WordsFor?.Invoke(draft) ?? question.Words);
        while (answers.ReadLine() is { } line)
        {
            string answer = StartWords.Plain(line);
            if (StartWords.IsStop(answer))
            {
                return Outcome.Ended;
            }

            if (StartWords.IsBack(answer))
            {
                if (lines.Count == 0 && !isFirst)
                {
                    return Outcome.Back;
                }

                TakeBack(lines);
                continue;
            }

            if (StartWords.IsUnknown(answer))
            {
                Say(question.Leave(draft));
                return Outcome.Answered;
            }

            string before = draft.Text;
            if (Refusal(question, line, answer) is { } why)
            {
                Say(why);
                continue;
            }

            keep(draft);
            Say(question.Understood(draft));
            if (!question.IsList)
            {
                return Outcome.Answered;
            }

            lines.Push(before);
        }

        return Outcome.Ended;
    }

    /// <summary>Takes the last line of a list back.</summary>
    private void TakeBack(Stack<string> lines)
    {
        if (lines.TryPop(out string? before))
        {
            draft.GoBackTo(before);
            keep(draft);
            Say("the last line is taken back");
        }
        else
        {
            Say("there is nothing before it today; any text editor changes the file");
        }
    }

    private string? Refusal(StartQuestion question, string line, string answer) =>
        line.Length > LongestAnswer ? $"that is longer than any answer: at most {LongestAnswer} characters, please"
        : line.Any(c => char.IsControl(c) && c != '\t') ? "plain letters and figures, please"
        : draft.Try(d => question.Take(d, answer));

    private void Head(string next)
    {
        if (next != part)
        {
            part = next;
            output.WriteLine();
            output.WriteLine(part);
        }
    }

    private void Say(string? words)
    {
        if (words is not null)
        {
            output.WriteLine($"  {words.ReplaceLineEndings(" ")}");
        }
    }
}
