namespace PlotAgronomy.FieldQuestions;

/// <summary>Answers the questions whose words are typed, or lists them all.</summary>
internal static class Program
{
    private static int Main(string[] words)
    {
        var known = AllQuestions.List.ToDictionary(q => q.Word);
        if (Array.Find(words, word => !known.ContainsKey(word)) is { } unknown)
        {
            Console.Error.WriteLine($"No question goes by '{unknown}'. Leave the word out to see them all.");
            return 2;
        }

        foreach (string word in words)
        {
            known[word].Answer(Console.Out);
        }

        if (words.Length == 0)
        {
            Say(AllQuestions.List);
        }

        return 0;
    }

    private static void Say(IReadOnlyList<FieldQuestion> questions)
    {
        int width = questions.Max(q => q.Word.Length);
        foreach (var question in questions)
        {
            Console.WriteLine($"{question.Word.PadRight(width)}  {question.Asked}");
        }
    }
}
