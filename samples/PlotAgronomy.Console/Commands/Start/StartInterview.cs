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

    /// <summary>Asks what is open.</summary>
    /// <returns>Whether all was asked; false where the person stopped or the answers ended.</returns>
    internal bool Ask()
    {
        var all = StartQuestions.All;
        string? begun = draft.Next;
        int first = Math.Max(0, all.ToList().FindIndex(q => q.Id == begun));
        for (int i = first; i < all.Count; i++)
        {
            bool goesOn = all[i].Id == begun && all[i].IsList;
            while (goesOn || all[i].IsOpen(draft))
            {
                goesOn = false;
                Mark(all[i].Id);
                if (!AskOne(all[i]))
                {
                    return false;
                }

                if (!all[i].IsRepeated)
                {
                    break;
                }
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
    private bool AskOne(StartQuestion question)
    {
        Head(question.Part);
        output.WriteLine(question.WordsFor?.Invoke(draft) ?? question.Words);
        while (answers.ReadLine() is { } line)
        {
            string answer = StartWords.Plain(line);
            if (StartWords.IsStop(answer))
            {
                return false;
            }

            if (StartWords.IsUnknown(answer))
            {
                Say(question.Leave(draft));
                return true;
            }

            if (Refusal(question, line, answer) is { } why)
            {
                Say(why);
                continue;
            }

            keep(draft);
            Say(question.Understood(draft));
            if (!question.IsList)
            {
                return true;
            }
        }

        return false;
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
